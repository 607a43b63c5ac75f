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
    public static Result<Draft> Waive(Finding finding, House house, string reason, string initials)
    {
        if (!finding.Open)
            return new Refusal("That finding is waived already.");
        return WaiverFacts.Reason.ReadTyped(reason, house) switch
        {
            { Ok: false } when reason.Trim().Length == 0 => new Refusal("A waiver needs a reason."),
            { Ok: false } tooMuch => new Refusal($"The reason of a waiver: {tooMuch.Reason}"),
            var because => WaiverFacts.Initials.ReadTyped(initials, house) switch
            {
                { Ok: false } bad => new Refusal($"A waiver needs initials, up to six letters. {bad.Reason}"),
                var who => new Draft($"Waived {finding.Check.Id} of {house.NameOf(finding.Subject)}: {because.Value}")
                    .New(ItemKind.Waiver, finding.Subject.Id, out var id)
                    .Put(id, WaiverFacts.Check, finding.Check.Id)
                    .Put(id, WaiverFacts.Figures, finding.Found.Message.In(house))
                    .Put(id, WaiverFacts.Arguments, finding.Found.Message.Figures)
                    .PutStored(id, WaiverFacts.Reason.Name, because.Value)
                    .PutStored(id, WaiverFacts.Initials.Name, who.Value),
            },
        };
    }
}
