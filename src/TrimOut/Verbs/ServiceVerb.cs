using System.CommandLine;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.InService;

namespace TrimOut.Verbs;

/// <summary><c>trimout service</c>: what is due in a house that was handed over, and what was done.</summary>
internal static class ServiceVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var day = new Option<string?>("--date") { Description = "The day on which it is looked at; today when left out.", HelpName = "yyyy-mm-dd" };
        var verb = new Command("service",
            "List what is due in a house that was handed over and what was done, a line each with tabs between: due, now, later or over, what; "
                + "done, day, to what, what, who, cause, serial taken off, serial put in, claim, what it came to. set records what was done.")
        {
            path, day, Common.GoOn,
        };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var house = look.At(parsed.GetRequiredValue(path)).House;
            var today = PaperVerb.Day(parsed.GetValue(day));
            foreach (var due in DueInService.Of(house, today))
                Common.Row("due", due.Pressing ? "now" : due.IsOver ? "over" : "later", due.Say.In(house));
            foreach (var done in house.Services)
            {
                Common.Row("done", done.Show(ServiceFacts.On), done.About is { Kind: not ItemKind.House } about ? house.NameOf(about) : "house",
                    done.Show(ServiceFacts.Kind), done.Show(ServiceFacts.By), done.Show(ServiceFacts.Cause), done.TakenOff ?? "",
                    done.NewSerial ?? "", done.Claim ?? "", done.SettledBy?.Show(ServiceFacts.Outcome) ?? "");
            }
            return look.End(ExitCode.Fine);
        });
        return verb;
    }
}
