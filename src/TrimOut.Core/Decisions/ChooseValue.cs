using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Settles a fact on which two laptops disagree.</summary>
public static class ChooseValue
{
    /// <summary>Puts one of the values over all of them.</summary>
    /// <param name="house">The house.</param>
    /// <param name="disagreement">The fact.</param>
    /// <param name="head">The value to keep: one of those that disagree.</param>
    public static Result<Draft> Of(House house, Disagreement disagreement, Head head) => !disagreement.Heads.Contains(head)
        ? new Refusal("That value is not one of those to choose from.")
        : new Draft($"{house.NameOf(disagreement.Item)}: {disagreement.Fact.Label}: chosen {disagreement.Show(head, house)}")
            .PutStored(disagreement.Item.Id, disagreement.Fact.Field(disagreement.Key), head.Stored);
}
