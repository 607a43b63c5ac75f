using System.Globalization;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Tests.WholeJob;

/// <summary>What an installer who does it right would type for a fact of a unit.</summary>
internal static class Answers
{
    private static readonly Length Sixteenth = Length.FromInches(0, 1, 16);

    public static string For(House house, Item item, Fact fact)
    {
        var unit = UnitOf(house, item);
        return fact.Subject switch
        {
            ItemKind.Window => OfWindow(unit!.Window, fact),
            ItemKind.Unit => OfUnit(unit!, fact),
            ItemKind.Run => OfRun(unit!, fact),
            ItemKind.Panel => OfPanel(house, fact),
            _ => OfHouse(house, fact),
        };
    }

    private static Unit? UnitOf(House house, Item item) => item.Kind switch
    {
        ItemKind.Unit => house.FindUnit(item.Id),
        ItemKind.Run => house.FindUnit(item.Under),
        ItemKind.Window => house.FindWindow(item.Id)!.Units[0],
        _ => null,
    };

    private static string OfWindow(Window window, Fact fact) => fact.Name switch
    {
        "room" => window.House.Rooms[0].Name,
        "facing" => "S",
        "reach" => "floor",
        "mount" => "inside",
        "escape" => "no",
        "rough-width" => "36",
        "rough-height" => "60",
        "width-top" or "width-middle" or "width-bottom" or "width-again" => Shown(window, FinishedWidth(window)),
        "height-left" or "height-middle" or "height-right" or "height-again" => Shown(window, FinishedHeight(window)),
        "diagonal-down" or "diagonal-up" => Shown(window, Diagonal(FinishedWidth(window), FinishedHeight(window))),
        "depth" => "5",
        "in-the-way" => "none",
        _ => throw new InvalidOperationException($"No answer for {fact.Label} of {window.Tag}."),
    };

    private static string OfUnit(Unit unit, Fact fact) => fact.Name switch
    {
        "kind" => "Roller",
        "lead-side" => unit.Kind?.MotorEnd == MotorEnd.Right ? "right" : "left",
        "power" => "panel",
        "socket" => "in reach",
        "entry-side" => unit.LeadSide == Side.Right ? "right" : "left",
        "entry-from-jamb" => "1",
        "entry-back" => "5",
        "entry-below-head" => "3",
        "entry-as-built" => unit.Show(UnitFacts.EntryFromJamb),
        "fabric" => "Linen weave",
        "colour" => "Chalk",
        "opacity" => "light filtering",
        "head-cover" => unit.Kind?.RaisedForm == RaisedForm.Stack ? "None" : Cover(unit.House),
        "ordered-on" => "2026-06-01",
        "acknowledgement" => "A-1047",
        "box-label" => unit.Tag,
        "delivered-width" => unit.Show(UnitFacts.OrderWidth),
        "delivered-height" => unit.Show(UnitFacts.OrderHeight),
        "size-read-from" => "label",
        "finish-as-ordered" => "yes",
        "lead-came-at" => unit.LeadSide == Side.Right ? "right" : "left",
        "damage" => "none",
        "serial" => "S-" + unit.Tag,
        "setback" => unit.Kind!.Show(CoveringKindFacts.Setback),
        "fixed-into" => "wood",
        "out-of-level" => "0",
        "free-cord" => "0",
        "cord-held-by" => "none",
        "cord-confirmed-by" => "The crew",
        "hub" => unit.House.Hubs[0].Name,
        "hub-name" => $"{Window(unit.Window.Room!.Name)} {Number(unit)}",
        "open-gap" => "1",
        "close-gap" => "0",
        _ => throw new InvalidOperationException($"No answer for {fact.Label} of {unit.Tag}."),
    };

    private static string OfRun(Unit unit, Fact fact) => fact.Name switch
    {
        "cable" => "16/2",
        "mains-distance" => "12",
        "mains-sheathed" => "yes",
        "hole-edge" => "1 1/2",
        "hole-to" => "side",
        "nail-plates" => "yes",
        "one-piece" => "yes",
        "tail-at-window" => Shown(unit.Window, TailFor(unit)),
        "tail-at-panel" => "36",
        "label-at-window" or "label-at-panel" => unit.Tag,
        "photo" => $"photos/{unit.Tag}.jpg",
        "spare-cables" => "0",
        "first-loop" => Ohms(Loop(unit)),
        "first-apart" or "second-apart" or "first-to-frame" or "second-to-frame" => "open",
        "tail-found" => unit.Run!.Show(RunFacts.TailAtWindow),
        "second-loop" => Ohms(unit.Run!.Item.Get(RunFacts.FirstLoop)!.Value),
        "panel" => unit.House.Panels.First(p => p.Runs.Count() < p.Type!.Outputs).Name,
        "output" => Enumerable.Range(1, 64).First(o => unit.Run!.Panel!.RunAt(o) is null).ToString(CultureInfo.InvariantCulture),
        "open-volts" => NumberText.Plain(OpenVolts(unit)),
        "loaded-volts" => Volts(unit),
        "polarity" => "right",
        "went-dead" => "this window",
        _ => throw new InvalidOperationException($"No answer for {fact.Label} of {unit.Tag}."),
    };

    private static string OfPanel(House house, Fact fact) => fact.Name switch
    {
        "type" => house.NameOf(house.ItemsOf(ItemKind.PanelType).First()),
        "location" => "Mechanical room, north wall",
        "board" => "Board A",
        "breaker" => "14",
        "breaker-rating" => "15",
        "connected-by" => "R. Field, licensed electrician",
        "licence" => "EL-0000",
        "connected-on" => "2026-07-20",
        "off-seen" => "meter read nothing",
        "off-by" => "The crew",
        _ => throw new InvalidOperationException($"No answer for {fact.Label} of a panel."),
    };

    private static string OfHouse(House house, Fact fact) => fact.Name switch
    {
        "openings" => house.Windows.Length.ToString(CultureInfo.InvariantCulture),
        "demonstrated-on" or "binder-given-on" or "accepted-on" => "2026-09-30",
        "demonstrated-to" or "accepted-by" => "The owner",
        "open-items-agreed" => "none",
        "oldest-paint" => "2026",
        "drill-guard" => "Glasses, masks, a vacuum at the drill",
        "power-cut-told" => "Every unit stays where it is until power is back.",
        _ => throw new InvalidOperationException($"No answer for {fact.Label} of the house."),
    };

    private static Length FinishedWidth(Window window) => window.SmallestWidth ?? window.Widths.Top ?? window.RoughWidth!.Value - Length.FromInches(0, 1, 2);

    private static Length FinishedHeight(Window window) =>
        window.LargestHeight ?? window.Heights.Left ?? window.RoughHeight!.Value - Length.FromInches(0, 1, 2);

    private static Length Diagonal(Length a, Length b) =>
        Length.FromInches((decimal)Math.Sqrt((double)(a.Inches * a.Inches + b.Inches * b.Inches))).RoundNearest(Sixteenth);

    /// <summary>A tail as long as the window is wide, and never shorter than six feet.</summary>
    private static Length TailFor(Unit unit) => Length.Max(Length.FromInches(72), (unit.Window.KnownWidth ?? Length.Zero).RoundUp(Length.FromInches(1)));

    /// <summary>What a sound run of that length reads at the usual 20 C.</summary>
    private static Resistance Loop(Unit unit) =>
        unit.Run is { Cable: { Conductor: { } conductor } cable, OneWay: { } length }
            ? TwoWire.Loop(length, Conductors.OhmsPerMetre(conductor, cable.Stranding ?? Stranding.Stranded, Temperature.Reference).Value)
            : throw new InvalidOperationException($"{unit.Tag} is to be tested before its way is known.");

    private static decimal OpenVolts(Unit unit) => unit.Run!.Supply!.Value.Volts + 0.1m;

    /// <summary>The head cover with the most room inside.</summary>
    private static string Cover(House house) =>
        house.ItemsOf(ItemKind.HeadCover).Select(i => new HeadCover(house, i)).OrderByDescending(c => c.RoomInside ?? Length.Zero).First().Name;

    /// <summary>What arrives over a sound run from a supply that gives a little more than its sheet says.</summary>
    private static string Volts(Unit unit) =>
        NumberText.Plain(Math.Round(OpenVolts(unit) - Loop(unit).Ohms * unit.Kind!.RunningCurrent!.Value.Amperes, 2));

    private static string Ohms(Resistance ohms) => NumberText.Plain(Math.Round(ohms.Ohms, 2));

    private static string Window(string room) => room.Split(' ')[0];

    private static string Number(Unit unit) => unit.Tag.TrimStart('W', 'w');

    private static string Shown(Window window, Length length) => length.Show(window.House.DisplayUnits);
}
