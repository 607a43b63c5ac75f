using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Kits;

/// <summary>The kit that a new house starts with: parts with their names, and of their values only what geometry or a standard gives.</summary>
/// <remarks>
/// Everything else is blank until it is read off the sheet of the part in hand. A value that many makers have is still somebody else's value.
/// </remarks>
public static class BlankKit
{
    private const int Handheld = 0;

    private static readonly int[] Gauges = [16, 18, 14, 20];

    private static readonly decimal[] SquareMillimetres = [1.5m, 0.75m, 1m, 2.5m];

    private static readonly Fact[] Given = [CoveringKindFacts.RaisedForm, CableTypeFacts.Conductor, RemoteTypeFacts.Gangs];

    /// <summary>Adds the blank kit to a draft.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="units">What the house measures in: its cables are gauges (ASTM B258) with inches, cross-sections (IEC 60228) with millimetres.</param>
    /// <param name="only">The sorts of parts that are wanted; all of them where none is said.</param>
    public static Draft WithBlankKit(this Draft draft, DisplayUnits units, IReadOnlyCollection<ItemKind>? only = null)
    {
        if (Wanted(ItemKind.CoveringKind))
        {
            draft = Kind(draft, "Roller", RaisedForm.Roll);
            draft = Kind(draft, "Cellular", RaisedForm.Stack);
            draft = Kind(draft, "Wood blind", RaisedForm.Stack);
        }
        if (Wanted(ItemKind.CableType))
        {
            draft = units == DisplayUnits.Inches
                ? Gauges.Aggregate(draft, (d, g) => Cable(d, $"{NumberText.Plain(g)}/2", new ConductorSize.Gauge(g)))
                : SquareMillimetres.Aggregate(draft, (d, a) => Cable(d, $"2 x {NumberText.Plain(a)} mm2", new ConductorSize.Metric(a)));
        }
        if (Wanted(ItemKind.HeadCover))
            draft = new[] { HeadCover.NoCover, "Fascia", "Valance" }.Aggregate(draft, (d, n) => Named(d, ItemKind.HeadCover, HeadCoverFacts.Name, n, out _));
        if (Wanted(ItemKind.PanelType))
            draft = Named(draft, ItemKind.PanelType, PanelTypeFacts.Name, "Panel", out _);
        if (Wanted(ItemKind.HubType))
            draft = Named(draft, ItemKind.HubType, HubTypeFacts.Name, "Hub", out _);
        if (!Wanted(ItemKind.RemoteType))
            return draft;
        draft = Named(draft, ItemKind.RemoteType, RemoteTypeFacts.Name, "Handheld", out var handheld).Put(handheld, RemoteTypeFacts.Gangs, Handheld);
        return Named(draft, ItemKind.RemoteType, RemoteTypeFacts.Name, "Wall remote", out _);

        bool Wanted(ItemKind kind) => only?.Contains(kind) != false;
    }

    /// <summary>Adds the head cover that is none, which belongs to every house whatever its kit has.</summary>
    internal static Draft WithNoCover(this Draft draft, out string id) =>
        Named(draft, ItemKind.HeadCover, HeadCoverFacts.Name, HeadCover.NoCover, out id);

    /// <summary>Whether more is known of a part than a blank kit begins with: a value of another sort, one that was held against a sheet.</summary>
    public static bool IsMore(Item part) => SheetValues.Of(part.Kind).Any(f => part.Latest(f)?.Stored is not null
        && (!Given.Contains(f) || part.Latest(Companion.Checked(f.Name))?.Stored is not null));

    /// <summary>Whether there is something of a part to keep for other houses: more than a blank kit begins with, or which sheet it is of.</summary>
    public static bool IsWorthKeeping(Item part) => IsMore(part)
        || AboutSheet.WhichSheet.Any(n => part.Latest(AboutSheet.Of(part.Kind, n))?.Stored is not null);

    /// <summary>Says of a new part of which values a blank means that nobody looked yet, where older parts take it for none.</summary>
    public static Draft AskingOf(this Draft draft, string id, ItemKind kind) =>
        kind == ItemKind.CoveringKind ? draft.PutStored(id, Companion.Asked(CoveringKindFacts.MiddleScrew.Name), "yes") : draft;

    private static Draft Kind(Draft draft, string name, RaisedForm form) =>
        Named(draft, ItemKind.CoveringKind, CoveringKindFacts.Name, name, out var id).Put(id, CoveringKindFacts.RaisedForm, form)
            .AskingOf(id, ItemKind.CoveringKind);

    private static Draft Cable(Draft draft, string name, ConductorSize size) =>
        Named(draft, ItemKind.CableType, CableTypeFacts.Name, name, out var id).Put(id, CableTypeFacts.Conductor, size);

    private static Draft Named(Draft draft, ItemKind kind, Fact<string> fact, string name, out string id) =>
        draft.New(kind, House.RootId, out id).Put(id, fact, name);
}
