using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Demonstration, binder, sign-off.</summary>
internal static class HandoverSteps
{
    public static readonly ImmutableArray<Step> All =
    [
        new("shown", Phase.Handover, ItemKind.Unit, "Shown to the owner",
            "Open, closed, preset, and what to do when it stops.",
            []),
        new("demonstrated", Phase.Handover, ItemKind.House, "Demonstration given",
            "Every room, every remote.",
            [HouseFacts.DemonstratedOn, HouseFacts.DemonstratedTo]),
        new("power-cut-shown", Phase.Handover, ItemKind.House, "Power cut explained",
            "What each unit does without power, and how it is moved by hand; first of all at an escape window.",
            [HouseFacts.PowerCutTold])
        {
            Since = 2,
        },
        new("binder-given", Phase.Handover, ItemKind.House, "Binder given",
            "On paper, and the file.",
            [HouseFacts.BinderGivenOn]),
        new("open-items-agreed", Phase.Handover, ItemKind.House, "Open items agreed",
            "Read the punch list together; write what was agreed, or none.",
            [HouseFacts.OpenItemsAgreed]),
        new(SignOff.StepId, Phase.Handover, ItemKind.House, "Signed off",
            "The owner signs the last page.",
            [HouseFacts.AcceptedBy, HouseFacts.AcceptedOn]),
    ];
}
