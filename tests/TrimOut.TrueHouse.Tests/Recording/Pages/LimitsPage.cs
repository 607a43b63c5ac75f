using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Open and close limits, and the presets on the remotes.</summary>
internal static class LimitsPage
{
    public static void Write(Installer installer)
    {
        var (house, book) = (installer.Truth, installer.Book);
        foreach (var unit in house.Units)
            Write(installer, unit);
        foreach (var remote in house.Remotes)
        {
            foreach (var (name, units) in remote.Presets)
            {
                book.AddPreset(remote.Name, name);
                if (remote.RunsAt.Length > 0)
                    book.Put($"{remote.Name}/{name}", (PresetFacts.RunsAt, remote.RunsAt));
                foreach (var unit in units)
                    book.PutFor($"{remote.Name}/{name}", PresetFacts.Position, unit.Key, "40");
            }
        }
        if (house.Remotes.Any(r => r.RunsAt.Length > 0))
            book.Put(Book.JobItself, (HouseFacts.Latitude, "39.74"), (HouseFacts.Longitude, "-104.99"), (HouseFacts.TimeZone, "America/Denver"));
        installer.MarkUnits(Phase.Limits);
    }

    /// <summary>What is read at one unit that is all open, and all closed.</summary>
    public static void Write(Installer installer, RealUnit unit) =>
        installer.Book.Put(unit.Key, (UnitFacts.OpenGap, installer.Tape.Read(unit.OpenGap, unit.Key, "open gap")),
            (UnitFacts.CloseGap, installer.Tape.Read(unit.CloseGap, unit.Key, "close gap")));
}
