using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Deliveries;
using TrimOut.Core.Plans.Visits;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.People;

/// <summary>A row of people and dates: a heading, a contact, a visit, a box that is awaited, or a phase that is to be ready by a day.</summary>
/// <param name="Id">Tells it from the others, also after the house changed; empty for a heading, which the cursor passes by.</param>
/// <param name="Heading">The words of a heading.</param>
internal sealed record PeopleRow(string Id, string Heading)
{
    public Contact? Contact { get; init; }

    public Visit? Visit { get; init; }

    public AwaitedBox? Box { get; init; }

    public BoxTooLate? TooLate { get; init; }

    public PhaseDue? Due { get; init; }
}

/// <summary>Who has a part in the job, who comes when, and which boxes are awaited.</summary>
internal static class PeopleRows
{
    public const string Contacts = "Contacts";
    public const string Visits = "Visits";
    public const string Ready = "To be ready by";

    public static IReadOnlyList<PeopleRow> Of(ScreenContext context)
    {
        var house = context.House;
        var boxes = AwaitedBox.Of(house, context.Report, context.Today).ToList();
        var late = VisitPlan.BoxesTooLate(house, context.Today).ToDictionary(b => b.Unit.Id);
        var due = VisitPlan.ReadyBy(house, context.OpenPhases).ToList();
        return
        [
            new("", Contacts), .. house.Contacts.Select(c => new PeopleRow(c.Id, "") { Contact = c }),
            new("", Visits), .. house.Visits.Select(v => new PeopleRow(v.Id, "") { Visit = v }),
            .. boxes.Count == 0 ? Array.Empty<PeopleRow>() : [new("", "Boxes not here, and to reorder")],
            .. boxes.Select(b => new PeopleRow(b.Unit.Id, "") { Box = b, TooLate = late.GetValueOrDefault(b.Unit.Id) }),
            .. due.Count == 0 ? Array.Empty<PeopleRow>() : [new("", Ready)],
            .. due.Select(d => new PeopleRow($"due/{d.Open.Phase}", "") { Due = d }),
        ];
    }
}
