using System.CommandLine;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Plans.Deliveries;

namespace TrimOut.Verbs;

/// <summary><c>trimout people</c>: contacts, visits, and boxes that are not here or are to be reordered.</summary>
internal static class PeopleVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var verb = new Command("people",
            "List who has a part in the job, who comes when, and which boxes are not here, a line each with tabs between: contact, name, part, number; "
                + "visit, day, what, state, who is expected; box, unit, day expected, how it stands, reorder.") { path, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var house = look.At(parsed.GetRequiredValue(path)).House;
            foreach (var contact in house.Contacts)
                Say("contact", contact.Name, contact.Show(ContactFacts.Part), contact.Show(ContactFacts.Telephone));
            foreach (var visit in house.Visits)
                Say("visit", visit.Show(VisitFacts.On), visit.Name, visit.Show(VisitFacts.State), string.Join(", ", visit.Expected.Select(c => c.Name)));
            foreach (var box in AwaitedBox.Of(house, CheckReport.Of(house), DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)))
                Say("box", box.Unit.Tag, box.Unit.Show(UnitFacts.ExpectedOn), box.Why.In(house), box.Reorder ? "reorder" : "");
            return look.End(ExitCode.Fine);
        });
        return verb;
    }

    private static void Say(params string[] cells) => Console.Out.WriteLine(string.Join('\t', cells));
}
