using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Pens;

/// <summary>What is made, cut, fixed and joined by what is written. Where it differs from the same house without the slip, the job comes out wrong.</summary>
public sealed class DoneByTheBook
{
    private readonly Dictionary<string, (string Text, double? Number, double Within)> _done = [];

    /// <summary>Notes what is done by the book in a stage.</summary>
    public void Note(Installer by, Stage stage)
    {
        var (truth, book) = (by.Truth, by.Book);
        foreach (var unit in truth.Units.Where(u => book.Has(ItemKind.Unit, u.Key)))
            Unit(truth, book.Unit(unit.Key), unit.Key, stage);
        if (stage == Stage.Handover)
        {
            foreach (var item in book.House.Items.Values.Where(i => !i.Removed))
            {
                foreach (var fact in Followed.Where(f => f.Subject == item.Kind))
                    Text($"{fact.Label.ToLowerInvariant()} of {book.NameOf(item.Id)}", fact.ShowOf(item, book.House));
            }
        }
    }

    /// <summary>What is done otherwise than in another house.</summary>
    public IEnumerable<string> OtherThan(DoneByTheBook other) => _done.Where(d => !other._done.TryGetValue(d.Key, out var there) || Differ(d.Value, there))
        .Select(d => d.Key);

    /// <summary>What a person does as it is written, without any measure of it afterwards.</summary>
    private static IReadOnlyList<Fact> Followed { get; } =
    [
        CoveringKindFacts.Setback, CoveringKindFacts.MiddleScrew, CoveringKindFacts.EndAllowance, CoveringKindFacts.PairHold, CoveringKindFacts.PresetHold,
        CoveringKindFacts.PartsPerUnit, RemoteFacts.Type, RemoteFacts.Room, RemoteFacts.Hub, RemoteFacts.Plate, HubFacts.Type, PanelFacts.Type,
        PanelFacts.Breaker, WindowFacts.OverlapEachSide, WindowFacts.HeadAbove, WindowFacts.Covered,
    ];

    private static bool Differ((string Text, double? Number, double Within) a, (string Text, double? Number, double Within) b) =>
        a.Number is { } one && b.Number is { } other ? Math.Abs(one - other) > a.Within : a.Text != b.Text;

    private void Unit(RealHouse truth, Unit unit, string key, Stage stage)
    {
        switch (stage)
        {
            case Stage.WalkThrough:
                foreach (var fact in (Fact<Core.Units.Length>[])[UnitFacts.EntryFromJamb, UnitFacts.EntryBack, UnitFacts.EntryBelowHead])
                    Number($"{fact.Label.ToLowerInvariant()} of {key}", (double?)unit.Item.Get(fact)?.Millimetres, 12);
                Texts(key, unit, UnitFacts.EntrySide, UnitFacts.Power);
                break;
            case Stage.Routed when unit.Run is { } run:
                Number($"cable cut for {key}", (double?)run.Needed?.Metres, Math.Max(1, (double)(run.Needed?.Metres ?? 0) * 0.1));
                Text($"cable for {key}", run.Cable?.Name ?? "");
                break;
            case Stage.Ordered:
                Number($"made width of {key}", Made(truth, unit), 2);
                Number($"height of {key}", (double?)unit.Item.Get(UnitFacts.OrderHeight)?.Millimetres, 6);
                Texts(key, unit, UnitFacts.Kind, UnitFacts.LeadSide, UnitFacts.Fabric, UnitFacts.Colour, UnitFacts.Opacity, UnitFacts.HeadCover);
                Text($"mount of {key}", unit.Window.Mount.ToString() ?? "");
                break;
            case Stage.Handover:
                Texts(key, unit, UnitFacts.Hub, UnitFacts.HubName);
                Text($"output of {key}", unit.Run is { } landed ? $"{landed.Panel?.Name} {landed.Output}" : "");
                break;
        }
    }

    private static double? Made(RealHouse truth, Unit unit)
    {
        var kind = truth.Kinds.FirstOrDefault(k => k.Name == unit.Kind?.Name);
        return (double?)unit.Item.Get(UnitFacts.OrderWidth)?.Millimetres
            - (kind is { MadeWidth: false } && unit.Window.Mount == Mount.Inside ? kind.Deduction : 0);
    }

    private void Texts(string key, Unit unit, params Fact[] facts)
    {
        foreach (var fact in facts)
            Text($"{fact.Label.ToLowerInvariant()} of {key}", fact.ShowOf(unit.Item, unit.House));
    }

    private void Text(string what, string text) => _done.TryAdd(what, (text, null, 0));

    private void Number(string what, double? number, double within) =>
        _done.TryAdd(what, (number?.ToString("0.#", CultureInfo.InvariantCulture) ?? "", number, within));
}
