using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Sun;
using TrimOut.Papers.OwnerPapers;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Day to day use.</summary>
internal static class LivingWithIt
{
    public static Section Section { get; } = new("living", "Living with it", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var house = data.House;
        to.List(Advice(house));
        Remotes(to, house);
        if (!SunIsKnown(house))
            return;
        to.Heading(3, "Against the sun");
        SunSides.Doubts(to, data);
        SunSides.Times(to, house, SunSides.Of(to, house));
        to.Say("Charts, glare and heat stand on the sun sheet, a paper of its own.");
    }

    private static void Remotes(MarkdownWriter to, House house)
    {
        if (house.Remotes.IsEmpty)
            return;
        to.Heading(3, "Remotes and presets");
        if (house.Remotes.Any(r => r.Presets.Any()))
            to.Say("A position says how far a unit is open: 0 % is closed, 100 % is open.");
        to.Filled(["Remote", "Type", "Kept in", "Wall plate", "Moves", "Presets"], house.Remotes.Select(r => Row(
            r.Name, r.Entry(RemoteFacts.Type), (r.Room?.FullName).OrDash(), r.Entry(RemoteFacts.Plate), r.Units.Select(u => u.Tag).JoinOrDash(),
            r.Presets.Select(p => $"{p.Name}: {Positions(p)}").JoinOrDash("; "))));
    }

    private static bool SunIsKnown(House house) => HouseSun.Missing(house).IsEmpty && !HouseSun.Facades(house).IsEmpty;

    /// <summary>The units of a preset, those that go equally far together.</summary>
    private static string Positions(Preset preset) =>
        string.Join(", ", preset.Positions.GroupBy(p => p.PercentOpen).Select(p => $"{string.Join(" ", p.Select(u => u.Unit.Tag))} {p.Key} %"));

    private static IEnumerable<Inline> Advice(House house)
    {
        yield return Ours("Move a unit with its remote. Let it finish before you send it the other way.");
        yield return Ours("How it is stopped on its way, and what each key of its remote does, is on the makers' sheets.");
        if (house.Remotes.Any(r => r.Presets.Any()))
            yield return Ours("Call a preset to bring a room to a stored set of positions. The table below says what each one does.");
        if (!house.Hubs.IsEmpty)
            yield return Ours(
                "Leave the hub switched on and where it stands: it knows every unit by the name in this binder. Moved far away, it may no longer reach them.");
        if (house.Units.Any(u => u.Item.Get(UnitFacts.Group) is not null))
            yield return Ours("Units of one group move together. Wait until all have stopped.");
        yield return Ours("Open the window itself only with its unit up or well clear of the sash and the handle.");
        yield return Ours("In wind, with a window open, raise the unit: a flapping bar damages fabric and motor.");
        yield return KindsInUse.Of(house).Any(k => k.Item.Get(CoveringKindFacts.WithoutPower) == WithoutPower.MovedByHand)
            ? Ours("While there is power, never pull, push or lift a unit by hand, and never hold it back while it moves.")
            : Ours("Never pull, push or lift a unit by hand, and never hold it back while it moves.");
        if (house.Remotes.Length > 0)
            yield return Ours(
                "Change a remote's battery when units answer late or only from near by. Keep batteries out of children's reach: swallowed ones can kill.");
        if (house.Units.Any(u => u.Power == PowerSource.Battery))
            yield return Ours("Charge a unit's own battery when and how the maker's sheet says, with the charger that it names.");
        if (house.Windows.Where(w => !w.LeftOut && w.Item.Get(WindowFacts.Escape) == Answer.Yes).Select(w => w.Tag).ToList() is { Count: > 0 } ways)
            yield return Ours($"Escape windows: {string.Join(", ", ways)}. Keep them clear, and know how each is opened without power.");
        if (house.Windows.Where(w => !w.LeftOut && w.Item.Get(WindowFacts.Escape) is null).Select(w => w.Tag).ToList() is { Count: > 0 } open)
            yield return Ours($"Nobody noted yet whether these are escape windows: {string.Join(", ", open)}.");
        yield return Ours($"In a power cut: {new JobItself(house).EntryOrBlank(HouseFacts.PowerCutTold)}");
        foreach (var kind in KindsInUse.Of(house).Where(k => k.Shown(CoveringKindFacts.WithoutPower) is not null))
            yield return Ours($"{kind.OnPaper()} without power: {kind.Entry(CoveringKindFacts.WithoutPower)}");
        yield return Ours("Keep this binder where whoever works on the house will look: beside the panel.");
    }
}
