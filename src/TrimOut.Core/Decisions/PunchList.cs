using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Decisions;

/// <summary>Writes punch items and waives findings.</summary>
public static class PunchList
{
    /// <summary>A punch item about something.</summary>
    /// <param name="house">The house.</param>
    /// <param name="about">The item it is about; the house itself when it is about nothing in particular.</param>
    /// <param name="what">What is to be fixed.</param>
    /// <param name="phase">The phase that it holds up.</param>
    public static Result<Draft> Write(House house, Item about, string what, Phase phase) => PunchFacts.What.ReadTyped(what, house).Then<Draft>(stored =>
        new Draft($"{house.NameOf(about)}: to fix: {stored}").New(ItemKind.Punch, about.Id, out var id)
            .PutStored(id, PunchFacts.What.Name, stored)
            .Put(id, PunchFacts.Phase, phase)
            .Put(id, PunchFacts.State, PunchState.Open));

    /// <summary>Says that a punch item was mended, or that it was not after all.</summary>
    public static Draft Toggle(PunchItem item) => item.Done
        ? new Draft($"Opened again: {item.Name}").Put(item.Id, PunchFacts.State, PunchState.Open)
        : new Draft($"Fixed: {item.Name}").Put(item.Id, PunchFacts.State, PunchState.Done);

    /// <summary>Passes a finding with a reason and initials. The waiver holds for these figures only.</summary>
    public static Result<Draft> Waive(Finding finding, House house, string reason, string initials) => Waive([finding], house, reason, initials);

    /// <summary>Passes several findings with one reason and initials: a waiver for each, which holds for its figures only, in one change.</summary>
    /// <param name="findings">The findings, each open.</param>
    /// <param name="house">The house.</param>
    /// <param name="reason">Why they may stay, as it was typed.</param>
    /// <param name="initials">Whose decision it is, up to six letters.</param>
    public static Result<Draft> Waive(IReadOnlyList<Finding> findings, House house, string reason, string initials)
    {
        if (findings.Count == 0)
            return new Refusal("No finding is chosen.");
        if (findings.FirstOrDefault(f => !f.Open) is { } waived)
            return new Refusal(findings.Count == 1 ? "That finding is waived already."
                : $"{waived.Check.Id} of {house.NameOf(waived.Subject)} is waived already.");
        return WaiverFacts.Reason.ReadTyped(reason, house) switch
        {
            { Ok: false } when reason.Trim().Length == 0 => new Refusal("A waiver needs a reason."),
            { Ok: false } tooMuch => new Refusal($"The reason of a waiver: {tooMuch.Reason}"),
            var because => WaiverFacts.Initials.ReadTyped(initials, house) switch
            {
                { Ok: false } bad => new Refusal($"A waiver needs initials, up to six letters. {bad.Reason}"),
                var who => findings.Aggregate(new Draft($"Waived {What(findings, house)}: {because.Value}"), (draft, finding) => draft
                    .New(ItemKind.Waiver, finding.Subject.Id, out var id)
                    .Put(id, WaiverFacts.Check, finding.Check.Id)
                    .Put(id, WaiverFacts.Figures, finding.Found.Message.In(house))
                    .Put(id, WaiverFacts.Arguments, finding.Found.Message.Figures)
                    .PutStored(id, WaiverFacts.Reason.Name, because.Value)
                    .PutStored(id, WaiverFacts.Initials.Name, who.Value)),
            },
        };
    }

    private static string What(IReadOnlyList<Finding> findings, House house) => string.Join("; ", findings.GroupBy(f => f.Check.Id)
        .Select(g => $"{g.Key} of {string.Join(", ", g.Select(f => house.NameOf(f.Subject)).Distinct())}"));
}
