using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a panel.</summary>
public static class PanelFacts
{
    private static readonly Declare Of = new(ItemKind.Panel);

    public static readonly Fact<string> Name = Of.Text("name", "Panel", "Its short name, on its door and on labels.", Phase.RoughIn, 12);
    public static readonly Fact<ItemRef> Type = Of.Item(ItemKind.PanelType, "type", "Type", "Which panel of the kit.", Phase.RoughIn);
    public static readonly Fact<string> Location = Of.Text("location", "Location", "Where it hangs.", Phase.RoughIn);
    public static readonly Fact<string> Board = Of.Evidence("board", "Board", "The distribution board that its breaker is in.", Phase.Power, 40);
    public static readonly Fact<string> Breaker = Of.Evidence("breaker", "Breaker", "The breaker that feeds it.", Phase.Power, 40);
    public static readonly Fact<Current> BreakerRating = Of.Amps("breaker-rating", "Breaker rating",
        "What is printed on that breaker, in amperes.", Phase.Power, most: 200);
    public static readonly Fact<Current> ElseOnBreaker = Of.Amps("else-on-breaker", "Other load on breaker",
        "What all else on that breaker draws, as the electrician adds it up; 0 where it feeds panels alone.", Phase.Power, least: 0, most: 200);
    public static readonly Fact<string> ConnectedBy = Of.Somebody("connected-by", "Connected by",
        "The licensed electrician who connected it to mains.", Phase.Power);
    public static readonly Fact<string> Licence = Of.Evidence("licence", "License", "The electrician's license number.", Phase.Power, 60);
    public static readonly Fact<DateOnly> ConnectedOn = Of.Date("connected-on", "Connected on", "The day it was connected.", Phase.Power);
    public static readonly Fact<OffSeen> OffSeen = Of.Choice<OffSeen>("off-seen", "Off before joints",
        "How its outputs were seen to be dead before the first joint was made.", Phase.Power);
    public static readonly Fact<string> OffBy = Of.Somebody("off-by", "Switched off by",
        "Who switched it off and kept it off. Where that takes the breaker: whoever the local rules let.", Phase.Power);
    public static readonly Fact<StepMark> Step = Of.Marks();

    internal static readonly Fact[] All =
    [
        Name, Type, Location, Board, Breaker, BreakerRating, ElseOnBreaker, ConnectedBy, Licence, ConnectedOn, OffSeen, OffBy, Step,
    ];
}
