using System.Globalization;
using System.Text;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Kept;

/// <summary>
/// How far a house was when this user last left its journal beside it. A house that does not hold that change is an older copy, put back over it:
/// its device's next numbers were given before, so it goes on under another name.
/// </summary>
/// <remarks>The file itself can't tell, for it was not written anew in between, and is the one that it was by all that its disk says.</remarks>
/// <param name="Count">How many changes it had.</param>
/// <param name="Seal">The seal of the last of them.</param>
internal sealed record LeftMark(long Count, string Seal)
{
    private const string Ending = ".left";

    /// <summary>Reads it; null where there is none for this house.</summary>
    public static LeftMark? Read(Surroundings here, HouseFileNames names, string folder, Trailer trailer) =>
        Encoding.UTF8.GetString(KeptFile.Bytes(here.Files, NameOf(folder, names))).Split(' ') is [var house, var number, var seal, "\n"]
            && house == trailer.House && long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && Durable.Seal.CanBe(count)
            ? new LeftMark(count, seal) : null;

    /// <summary>Writes it, where that can be.</summary>
    public void Write(Surroundings here, HouseFileNames names, string folder, Trailer trailer)
    {
        try
        {
            using (var file = here.Files.Create(NameOf(folder, names) + ".new"))
                file.Write(0, Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{trailer.House} {Count} {Seal} \n")));
            here.Files.Rename(NameOf(folder, names) + ".new", NameOf(folder, names));
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            // Without it only an older copy that is put back is not known for one.
        }
    }

    /// <summary>Whether a house still holds the change; taken as true where its file goes further, whose rows are not at hand.</summary>
    /// <param name="before">How many changes come before these entries.</param>
    /// <param name="entries">The entries that are at hand.</param>
    public bool IsIn(long before, IReadOnlyList<Entry> entries) =>
        Count <= before || (Count - before <= entries.Count && entries[(int)(Count - before) - 1].Seal == Seal);

    private static string NameOf(string folder, HouseFileNames names) => Path.Combine(folder, names.Place + Ending);
}
