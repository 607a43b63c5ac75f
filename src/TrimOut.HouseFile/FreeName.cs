using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile;

/// <summary>Whether a house file can be made under a name: the one rule for everything that makes one.</summary>
/// <remarks>
/// A journal without its house file holds saves that may be nowhere else. A new file beside it would take it for its own at the next opening and
/// refuse it, or write over it.
/// </remarks>
internal static class FreeName
{
    /// <summary>Whether nothing of a house has the name.</summary>
    public static bool IsFree(Surroundings here, HouseFileNames names) => !here.Files.Exists(names.Main) && !here.Files.Exists(names.Journal);

    /// <summary>Throws where something of a house has the name.</summary>
    /// <exception cref="HouseStoreException">It has; the message says what it is and what to do. Nothing was changed.</exception>
    public static void Require(Surroundings here, HouseFileNames names)
    {
        if (here.Files.Exists(names.Main))
            throw new HouseStoreException(StoreFault.AlreadyThere, $"{names.Main} is there already. Choose another name, or open it.");
        if (here.Files.Exists(names.Journal))
            throw new HouseStoreException(StoreFault.AlreadyThere,
                $"{names.Main} was not made: beside it lies {names.Journal}, {HeldIn(here, names)}. Nothing was changed. {WhatToDo(names)} "
                + "To begin another house, choose another name, or move that file away.")
            { House = names.Main };
    }

    /// <summary>What is said of a house file that is not there while its journal is.</summary>
    public static string OnlyJournal(Surroundings here, HouseFileNames names) =>
        $"There is no house file {names.Main}, but beside it lies {names.Journal}, {HeldIn(here, names)}. {WhatToDo(names)}";

    private static string WhatToDo(HouseFileNames names) =>
        $"Put the house file back beside it, or bring out what it holds: trimout rescue {ShellWord.Of(names.Main)} NEW.trimout.";

    /// <summary>What a journal holds whose house file is gone, in words.</summary>
    private static string HeldIn(Surroundings here, HouseFileNames names)
    {
        try
        {
            using var journal = here.Files.OpenToRead(names.Journal);
            var head = Journal.Heads(journal).FirstOrDefault();
            var saves = head is null ? 0 : Journal.Read(journal, head.House, here.Seal).Entries.Count;
            return saves > 0 ? $"a journal with {NumberText.Counted(saves, "save")} that may be nowhere else"
                : head is not null ? "a house's journal without a save" : "which can't be read as a house's journal";
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return "which can't be read";
        }
    }
}
