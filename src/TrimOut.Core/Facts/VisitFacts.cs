using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a visit: one day's work or delivery at the house.</summary>
public static class VisitFacts
{
    private static readonly Declare Of = new(ItemKind.Visit);

    public static readonly Fact<string> What = Of.Text("what", "Visit", "What is done on that day, such as Hang upstairs.", null, 60);
    public static readonly Fact<DateOnly> On = Of.Date("on", "Day", "The day that is agreed.");
    public static readonly Fact<TimeOnly> From = Of.Clock("from", "From", "When it begins, by the clocks of the house; blank for all day.", null);
    public static readonly Fact<decimal> Lasts = Of.Number("lasts", "Lasts, hours", "How long it is to last, such as 3.5.", null, 0.25m, 24);
    public static readonly Fact<decimal> Worked = Of.Number("worked", "Hours worked",
        "What it took, in hours of all people together: three who work four hours are 12.", null, 0.25m, 500);
    public static readonly Fact<Phase> Phase = Of.Choice<Phase>("phase", "Phase", "The phase that it belongs to; a delivery belongs to receive.");
    public static readonly Fact<YesNo> Expects = Of.YesPer("expects", "Expected", "Whether that contact is expected to be there.", null);
    public static readonly Fact<VisitState> State = Of.Choice<VisitState>("state", "State", "Planned, done or called off.");
    public static readonly Fact<string> Note = Of.Text("note", "Note", "What must be ready before, or what came of it.", null, Declare.Note);

    internal static readonly Fact[] All = [What, On, From, Lasts, Worked, Phase, Expects, State, Note];
}
