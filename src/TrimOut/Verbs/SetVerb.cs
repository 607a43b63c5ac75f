using System.CommandLine;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.HouseFile.Texts;

namespace TrimOut.Verbs;

/// <summary><c>trimout set</c>: values from a script, saved line by line.</summary>
internal static class SetVerb
{
    private const int LongestLine = 100_000;
    private const int MostRefused = 1_000;
    private const string MergeInto = "merge-into";

    public static Command Build()
    {
        var path = Common.House();
        var by = Common.By();
        var verb = new Command("set",
            "Put values that come on standard input: tag, detail and value with tabs between, a line each. A line's number is written when it is saved. " +
                "Ends with 2 when a line was refused.") { path, by };
        verb.SetAction(parsed =>
        {
            var (house, scribe) = HouseSource.Open(parsed.GetRequiredValue(path), parsed.GetValue(by)!, brief: true);
            using (house)
            {
                var (refused, inARow) = (false, 0);
                var marks = new StepMarks(scribe.Steps);
                var lines = new ShortLines(Console.In, LongestLine);
                while (lines.Next() is { } line)
                {
                    if (string.IsNullOrWhiteSpace(line))
                        continue;
                    var saved = lines.TooLong ? new Refusal($"It is longer than {LongestLine} characters. Nothing after its beginning was read.")
                        : Read(scribe.House, line, marks).Then(scribe.Record);
                    if (saved.Ok)
                        Console.Out.WriteLine(lines.Number.ToString(CultureInfo.InvariantCulture));
                    else
                        Common.Say(string.Create(CultureInfo.InvariantCulture, $"Line {lines.Number}: {saved.Reason}"));
                    (refused, inARow) = (refused || !saved.Ok, saved.Ok ? 0 : inARow + 1);
                    if (inARow == MostRefused)
                        throw new VerbException(ExitCode.BadData, string.Create(CultureInfo.InvariantCulture,
                            $"The last {MostRefused} lines were all refused: that is no list of values. Nothing after line {lines.Number} was read."));
                }
                return refused ? ExitCode.LeftOut : ExitCode.Fine;
            }
        });
        return verb;
    }

    private static Result<Draft> Read(House house, string line, StepMarks marks)
    {
        if (line.Split('\t', 3) is not [var tag, var name, var value])
            return new Refusal("Write tag, detail and value with a tab between.");
        if (tag.Trim() is ['@', .. var named])
            return OfRoom(house, named.Trim(), name.Trim(), value);
        var unit = house.Units.FirstOrDefault(u => SameName.Comparer.Equals(u.Tag, tag));
        var window = house.FindTag(tag.Trim()) ?? unit?.Window;
        if (window is null)
            return new Refusal($"There is no window {tag.Trim()}.");
        if (StepMarks.IdIn(name.Trim()) is { } step)
            return marks.Read(unit ?? window.Units.FirstOrDefault(), step, value.Trim());
        foreach (var item in new[] { window.Item, (unit ?? window.Units.FirstOrDefault())?.Item,
            (unit ?? window.Units.FirstOrDefault())?.Run?.Item }.OfType<Item>())
        {
            if (FactTable.Find(item.Kind, name.Trim()) is { IsKeyed: false } fact)
                return SetFact.Typed(house, item, fact, value);
        }
        return new Refusal($"There is no detail called {name.Trim()} of a window, a unit or a home run.");
    }

    private static Result<Draft> OfRoom(House house, string named, string name, string value)
    {
        var read = RoomNames.Read(named, house);
        if (!read.Ok)
            return new Refusal(read.Reason!);
        if (read.Value.Id is not { } id || house.FindRoom(id) is not { } room)
            return new Refusal($"There is no room {named}.");
        if (name == MergeInto)
        {
            return RoomNames.Read(value.Trim(), house).Then(into => into.Id is { } right
                ? ArrangeRooms.Merge(room, house.FindRoom(right)!)
                : new Refusal($"There is no room {value.Trim()}."));
        }
        return FactTable.Find(ItemKind.Room, name) is { } fact
            ? SetFact.Typed(house, room.Item, fact, value)
            : new Refusal($"There is no detail called {name} of a room. There are: " +
                $"{string.Join(", ", FactTable.Of(ItemKind.Room).Select(f => f.Name))}, {MergeInto}.");
    }
}
