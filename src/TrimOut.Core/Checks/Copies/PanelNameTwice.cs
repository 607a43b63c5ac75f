using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Copies;

/// <summary>No two panels have one name, no two hubs and no two remotes.</summary>
/// <remarks>
/// <para>Why: two laptops can each add a panel, a hub or a remote under one name; whoever reads it on a cable, a door sheet or a list then lands the cable
/// on the wrong panel, or pairs with the wrong one.</para>
/// <para>To clear: give one of them another name, on its door or its back too, or remove it when both are the same.</para>
/// </remarks>
public sealed class PanelNameTwice : SubjectCheck
{
    private static readonly Message OfPanels = new("{0} is the name of {1} panels.");
    private static readonly Message OfHubs = new("{0} is the name of {1} hubs.");
    private static readonly Message OfRemotes = new("{0} is the name of {1} remotes.");
    private static readonly Message OtherPanelName = new("Give one of them another name, on its door too, or remove it if both are the same panel.");
    private static readonly Message OtherHubName = new("Give one of them another name, in its app too, or remove it if both are the same hub.");
    private static readonly Message OtherRemoteName = new("Give one of them another name, on its back too, or remove it if both are the same remote.");

    private static readonly ImmutableArray<ItemKind> Kinds = [ItemKind.Panel, ItemKind.Hub, ItemKind.Remote];

    private readonly IReadOnlyDictionary<Phase, CheckInfo> _byPhase;

    /// <summary>The rule.</summary>
    public PanelNameTwice() => _byPhase = Info.InEachPhase();

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("panel-name-twice", "Two panels, hubs or remotes have the same name", Severity.Stop, Phase.RoughIn,
        new Source(Source.CommonPractice, "every panel, every hub and every remote a name of its own among its kind, whatever its case"));

    internal override IEnumerable<string> SubjectIds(House house) => Kinds.SelectMany(house.ItemsOf).Select(i => i.Id);

    internal override Subject Find(House house, string id) => new AnyItem(house, house.State.Items[id]);

    internal override IEnumerable<CheckResult> RunOn(Subject subject)
    {
        var item = subject.Item;
        var fact = (Fact<string>)FactTable.Find(item.Kind, PanelFacts.Name.Name)!;
        if (item.Get(fact) is not { } name)
            return [];
        var others = subject.House.Look(Lookups.ByName, Lookups.NameKey(item.Kind, name)).Where(o => o != item.Id)
            .Select(o => Arg.Name(subject.House.Find(o)!)).ToList();
        if (others.Count == 0)
            return [Result(new Outcome.Fine())];
        var (said, mend) = item.Kind switch
        {
            ItemKind.Panel => (OfPanels, OtherPanelName),
            ItemKind.Hub => (OfHubs, OtherHubName),
            _ => (OfRemotes, OtherRemoteName),
        };
        return [Result(new Outcome.Found(said.With(Arg.Of([Arg.Typed(ShownText.Key(name).ToUpperInvariant())], Arg.Name(subject)),
            Arg.Of(others, others.Count + 1)), mend, FieldRef.To(item, fact)))];

        CheckResult Result(Outcome outcome) => new(_byPhase[item.Kind == ItemKind.Panel ? Phase.RoughIn : Phase.Pair], item, outcome);
    }
}
