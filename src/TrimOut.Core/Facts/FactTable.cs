using System.Collections.Frozen;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts;

/// <summary>Every fact there is.</summary>
public static class FactTable
{
    private static readonly FrozenDictionary<ItemKind, Fact[]> BySubject = new Dictionary<ItemKind, Fact[]>
    {
        [ItemKind.House] = HouseFacts.All,
        [ItemKind.Room] = RoomFacts.All,
        [ItemKind.Window] = WindowFacts.All,
        [ItemKind.Unit] = UnitFacts.All,
        [ItemKind.Run] = RunFacts.All,
        [ItemKind.Leg] = LegFacts.All,
        [ItemKind.Panel] = PanelFacts.All,
        [ItemKind.Hub] = HubFacts.All,
        [ItemKind.Remote] = RemoteFacts.All,
        [ItemKind.Preset] = PresetFacts.All,
        [ItemKind.Punch] = PunchFacts.All,
        [ItemKind.Waiver] = WaiverFacts.All,
        [ItemKind.Box] = BoxFacts.All,
        [ItemKind.Contact] = ContactFacts.All,
        [ItemKind.Visit] = VisitFacts.All,
        [ItemKind.Service] = ServiceFacts.All,
        [ItemKind.CoveringKind] = CoveringKindFacts.All,
        [ItemKind.CableType] = CableTypeFacts.All,
        [ItemKind.PanelType] = PanelTypeFacts.All,
        [ItemKind.HubType] = HubTypeFacts.All,
        [ItemKind.RemoteType] = RemoteTypeFacts.All,
        [ItemKind.HeadCover] = HeadCoverFacts.All,
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<(ItemKind, string), Fact> ByName =
        BySubject.Values.SelectMany(f => f).ToFrozenDictionary(f => (f.Subject, f.Name));

    /// <summary>The facts of one kind of item, in the order in which they are asked for.</summary>
    public static IReadOnlyList<Fact> Of(ItemKind subject) => BySubject[subject];

    /// <summary>All details.</summary>
    public static IEnumerable<Fact> All => Enum.GetValues<ItemKind>().SelectMany(k => BySubject[k]);

    /// <summary>The fact that a field of an item holds; null for a field that this version does not know.</summary>
    public static Fact? Find(ItemKind subject, string field)
    {
        if (ByName.TryGetValue((subject, field), out var fact))
            return fact;
        var colon = field.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && ByName.TryGetValue((subject, field[..colon]), out var keyed) && keyed.IsKeyed ? keyed : null;
    }

    /// <summary>Whether an item is part of the kit rather than of the house.</summary>
    public static bool IsKit(ItemKind kind) => kind >= ItemKind.CoveringKind;
}
