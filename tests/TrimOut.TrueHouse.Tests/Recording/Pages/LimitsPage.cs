using TrimOut.Core.Facts;
using TrimOut.Core.Phases;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Open and close limits, and the presets on the remotes.</summary>
internal static class LimitsPage
{
    public static void Write(Installer installer)
    {
        var (house, book, tape) = (installer.Truth, installer.Book, installer.Tape);
        foreach (var unit in house.Units)
            book.Put(unit.Key, (UnitFacts.OpenGap, tape.Read(unit.OpenGap, unit.Key, "open gap")),
                (UnitFacts.CloseGap, tape.Read(unit.CloseGap, unit.Key, "close gap")));
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
}
