using System.CommandLine;
using System.Globalization;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Units;

namespace TrimOut.Verbs;

/// <summary><c>trimout parts</c>: everything that a house takes, by when it must be ordered, and what each line was counted from.</summary>
internal static class PartsVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var now = new Option<bool>("--now")
        {
            Description = "Only what is to be called off now, the most pressing first: what must be ordered within 14 days or should have been; where no day "
                + "is known, what the phase after the furthest one that was begun takes.",
        };
        var date = new Option<string?>("--date") { Description = "The day on which it is looked at; today when left out.", HelpName = "yyyy-mm-dd" };
        var verb = new Command("parts",
            "List everything that a house takes, a line each: group, part, how many, unit, what it was counted from, the phase that it is needed in, the day "
                + "to have it by, the last day to order it, the day on which it was ordered, what it is not ordered for, and how many are still to be ordered "
                + "where that can be counted, with tabs between. What the marks show to be in the house already is not to be ordered. "
                + "A line that can't be counted yet has no number, or says \"at least\" before it, and what is missing.") { path, now, date, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var log = look.At(parsed.GetRequiredValue(path));
            var house = log.House;
            var all = CallOff.Of(house, log.Changes, HouseParts.Of(house));
            foreach (var call in parsed.GetValue(now) ? CallOff.Now(house, all, PaperVerb.Day(parsed.GetValue(date))) : all)
            {
                var (line, needed, orderBy, _, ordered, waiting) = call;
                Common.Row(KebabCase.Of(line.Group), line.Part.In(house), line.Shown, line.Unit, line.CountedFrom.In(house),
                    KebabCase.Of(line.NeededIn), Iso(needed), Iso(orderBy), Iso(ordered), string.Join(", ", waiting),
                    call.Left is { } left ? NumberText.Plain(left) : "");
            }
            return look.End(ExitCode.Fine);
        });
        return verb;
    }

    private static string Iso(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
