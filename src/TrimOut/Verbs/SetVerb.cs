using System.CommandLine;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.HouseFile.Texts;

namespace TrimOut.Verbs;

/// <summary><c>trimout set</c>: values from a script, saved line by line.</summary>
internal static class SetVerb
{
    private const int LongestLine = 100_000;
    private const int MostRefused = 1_000;

    public static Command Build()
    {
        var path = Common.House();
        path.Arity = ArgumentArity.ZeroOrOne;
        var details = new Option<bool>("--details") { Description = "List every detail there is, with what may be typed, and put nothing." };
        var by = Common.By();
        var verb = new Command("set",
            "Put values that come on standard input: tag or name, detail and value with tabs between, a line each. " +
                "A line's number is written when it is saved. Ends with 2 when a line was refused.") { path, by, details };
        verb.SetAction(parsed =>
        {
            if (parsed.GetValue(details))
                return ListDetails();
            if (parsed.GetValue(path) is not { } file)
                throw new VerbException(ExitCode.Usage, "Say which house: trimout set HOUSE. trimout set --details lists what can be put.");
            var (house, scribe) = HouseSource.Open(file, parsed.GetValue(by)!, brief: true);
            using (house)
            {
                if (house.ReadOnlyBecause is { } because)
                    throw new VerbException(ExitCode.Of(house.ReadOnlyFault), $"Nothing was saved: {because}");
                var (refused, inARow) = (false, 0);
                var marks = new StepMarks(scribe.Steps);
                var lines = new ShortLines(Console.In, LongestLine);
                while (lines.Next() is { } line)
                {
                    if (string.IsNullOrWhiteSpace(line))
                        continue;
                    var saved = lines.TooLong ? new Refusal($"It is longer than {LongestLine} characters. Nothing after its beginning was read.")
                        : TextBytes.IsBroken(line) ? new Refusal(TextBytes.NotUtf8)
                        : Read(scribe.House, line, marks).Then(scribe.Record);
                    if (saved.Ok)
                        Console.Out.WriteLine(lines.Number.ToString(CultureInfo.InvariantCulture));
                    else
                        Common.Say(string.Create(CultureInfo.InvariantCulture, $"Line {lines.Number}: {saved.Reason}"));
                    if (!saved.Ok && scribe.NotSaved is not null)
                        throw new VerbException(ExitCode.Of(scribe.NotSavedFault), string.Create(CultureInfo.InvariantCulture,
                            $"Line {lines.Number} and what comes after it is not saved."));
                    if (saved.Ok && line.Split('\t', 3).Any(p => ShownText.Kept(p) != p))
                        Common.Say(string.Create(CultureInfo.InvariantCulture,
                            $"Line {lines.Number}: characters in it that can't be seen, or act on a screen, were left out."));
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

    /// <summary>The change that a line makes: a mark of a step of a unit, or a value of anything that has a name.</summary>
    private static Result<Draft> Read(House house, string line, StepMarks marks) =>
        line.Split('\t', 3) is [var tag, var name, var value] && StepMarks.IdIn(name.Trim()) is { } step && UnitOf(house, tag.Trim()) is { } unit
            ? marks.Read(unit, step, value.Trim())
            : SetLine.Read(house, line, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime));

    private static Unit? UnitOf(House house, string tag) =>
        house.Units.FirstOrDefault(u => SameName.Comparer.Equals(u.Tag, tag)) ?? house.FindTag(tag)?.Units.FirstOrDefault();

    /// <summary>Every detail there is, a line each: of what, name, label and what may be typed, with tabs between.</summary>
    private static int ListDetails()
    {
        foreach (var fact in FactTable.All.Where(f => f.Name != StepMark.FactName && f.Subject != ItemKind.Waiver))
        {
            var name = fact.IsKeyed ? $"{fact.Name} {ItemsNamed.Word(SetLine.OfWhat(fact)).ToUpperInvariant()}" : fact.Name;
            Common.Row(ItemsNamed.Word(fact.Subject), name, fact.Label, fact.Hint);
        }
        return ExitCode.Fine;
    }
}
