namespace TrimOut.Core.Facts;

/// <summary>Yes or no.</summary>
public enum YesNo
{
    /// <summary>Yes.</summary>
    Yes,

    /// <summary>No.</summary>
    No,
}

/// <summary>What was found out of something that only somebody else can say.</summary>
public enum Answer
{
    /// <summary>Yes.</summary>
    Yes,

    /// <summary>No.</summary>
    No,

    /// <summary>It was asked, and nobody could say yet: open, and never a pass.</summary>
    NotKnownYet,
}

/// <summary>Left or right, always as seen from inside the room facing the window.</summary>
public enum Side
{
    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,
}

/// <summary>What it takes to reach a window.</summary>
public enum Reach
{
    /// <summary>From the floor.</summary>
    Floor,

    /// <summary>From a ladder.</summary>
    Ladder,

    /// <summary>From a scaffold.</summary>
    Scaffold,
}

/// <summary>Where a unit hangs.</summary>
public enum Mount
{
    /// <summary>Inside the reveal.</summary>
    Inside,

    /// <summary>On the face, over the opening.</summary>
    Outside,
}

/// <summary>What a maker is told as the width of a unit.</summary>
public enum OrderedWidth
{
    /// <summary>The opening, or what is to be covered: the maker takes the deduction off.</summary>
    Opening,

    /// <summary>The made width: inside, whoever orders has taken the deduction off.</summary>
    Made,
}

/// <summary>What the size of a delivery was read from.</summary>
public enum SizeReadFrom
{
    /// <summary>The label of its box, which has the size that was ordered.</summary>
    Label,

    /// <summary>The unit itself, with a tape.</summary>
    Unit,
}

/// <summary>What the depth of a reveal was read to.</summary>
public enum DepthTo
{
    /// <summary>The glass or the frame, past whatever stands in the way.</summary>
    Glass,

    /// <summary>The first thing in the way.</summary>
    FirstThing,
}

/// <summary>How much light a fabric lets through.</summary>
public enum Opacity
{
    /// <summary>One can see through it.</summary>
    Sheer,

    /// <summary>Light comes through, shapes do not.</summary>
    LightFiltering,

    /// <summary>No light comes through.</summary>
    Blackout,
}

/// <summary>What drives a unit.</summary>
public enum PowerSource
{
    /// <summary>An output of a panel, over a home run.</summary>
    Panel,

    /// <summary>A supply in a socket near the window.</summary>
    PlugIn,

    /// <summary>A battery in the unit.</summary>
    Battery,
}

/// <summary>Whether the cord of a plug-in supply reaches a socket.</summary>
public enum SocketNear
{
    /// <summary>It does, out of sight and out of reach.</summary>
    InReach,

    /// <summary>There is one, and the cord would have to cross the wall.</summary>
    TooFar,

    /// <summary>There is none.</summary>
    None,
}

/// <summary>What the screws of brackets hold in.</summary>
public enum FixedInto
{
    /// <summary>A stud, a header or blocking of wood.</summary>
    Wood,

    /// <summary>Brick, block or concrete, with plugs.</summary>
    Masonry,

    /// <summary>Steel.</summary>
    Steel,

    /// <summary>Plasterboard with anchors that are made for such a load.</summary>
    HollowAnchors,

    /// <summary>Plasterboard, and nothing behind it.</summary>
    BoardAlone,
}

/// <summary>What of a hole its distance to an edge is measured to.</summary>
public enum HoleTo
{
    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its nearer side.</summary>
    Side,
}

/// <summary>Which window goes dead when one output is off.</summary>
public enum WentDead
{
    /// <summary>The one of the run that is written beside the output.</summary>
    ThisWindow,

    /// <summary>Another one.</summary>
    AnotherWindow,

    /// <summary>None.</summary>
    NoWindow,
}

/// <summary>How a panel was seen to be off.</summary>
public enum OffSeen
{
    /// <summary>A meter read nothing at its outputs.</summary>
    MeterReadNothing,

    /// <summary>It was switched off, and nobody looked at its outputs.</summary>
    NotLookedAt,

    /// <summary>It was live.</summary>
    ItWasOn,
}

/// <summary>Which way a leg of cable goes.</summary>
public enum LegDirection
{
    /// <summary>Up.</summary>
    Up,

    /// <summary>Down.</summary>
    Down,

    /// <summary>Across.</summary>
    Across,

    /// <summary>Through a floor.</summary>
    ThroughFloor,
}

/// <summary>What is around a leg of cable, which decides the listing that it needs.</summary>
public enum CablePlace
{
    /// <summary>Inside a wall or ceiling of one floor.</summary>
    InWall,

    /// <summary>Vertically, between floors.</summary>
    BetweenFloors,

    /// <summary>In a space that moves air for the building.</summary>
    AirHandlingSpace,
}

/// <summary>The tube that a leg of cable lies in, which can relax the listing that it needs.</summary>
public enum Conduit
{
    /// <summary>No tube.</summary>
    None,

    /// <summary>A metal one, closed all along.</summary>
    Metal,

    /// <summary>A plastic one.</summary>
    Plastic,
}

/// <summary>What a covering does when its power fails.</summary>
public enum WithoutPower
{
    /// <summary>It stays where it is, and no hand moves it.</summary>
    StaysPut,

    /// <summary>It is moved by hand, without a tool.</summary>
    MovedByHand,

    /// <summary>It opens by itself, or moves on from a battery.</summary>
    Opens,
}

/// <summary>The marking of a cable for power-limited circuits and what may stand in for one, NFPA 70-2017 table 725.154(A).</summary>
public enum CableListing
{
    /// <summary>Class 2, plenum.</summary>
    Cl2p,

    /// <summary>Class 2, riser.</summary>
    Cl2r,

    /// <summary>Class 2, general.</summary>
    Cl2,

    /// <summary>Class 2, limited use.</summary>
    Cl2x,

    /// <summary>Class 3, plenum.</summary>
    Cl3p,

    /// <summary>Class 3, riser.</summary>
    Cl3r,

    /// <summary>Class 3, general.</summary>
    Cl3,

    /// <summary>Class 3, limited use.</summary>
    Cl3x,

    /// <summary>Communications, plenum.</summary>
    Cmp,

    /// <summary>Communications, riser.</summary>
    Cmr,

    /// <summary>Communications, general.</summary>
    Cmg,

    /// <summary>Communications.</summary>
    Cm,

    /// <summary>Communications, limited use.</summary>
    Cmx,

    /// <summary>Power-limited tray cable.</summary>
    Pltc,

    /// <summary>Not listed, or not legible on the jacket.</summary>
    NotListed,
}

/// <summary>How a conductor is made.</summary>
public enum Stranding
{
    /// <summary>One wire.</summary>
    Solid,

    /// <summary>Several wires laid together.</summary>
    Stranded,
}

/// <summary>How a run's polarity read.</summary>
public enum Polarity
{
    /// <summary>Plus to plus, minus to minus.</summary>
    Right,

    /// <summary>The other way round.</summary>
    Swapped,
}

/// <summary>What the house is under the wiring rules.</summary>
public enum Dwelling
{
    /// <summary>A one- or two-family house.</summary>
    OneOrTwoFamily,

    /// <summary>A flat in a larger building.</summary>
    MultiFamily,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>What somebody does in a job.</summary>
public enum ContactPart
{
    /// <summary>Owns the house, or answers for its owner.</summary>
    Owner,

    /// <summary>Fits the coverings.</summary>
    Crew,

    /// <summary>The licensed electrician.</summary>
    Electrician,

    /// <summary>Opens the house and knows what goes on there.</summary>
    Site,

    /// <summary>Sells or ships what was ordered.</summary>
    Supplier,

    /// <summary>Anything else, such as plaster or paint.</summary>
    OtherTrade,
}

/// <summary>How a visit stands.</summary>
public enum VisitState
{
    /// <summary>Still to come.</summary>
    Planned,

    /// <summary>It took place.</summary>
    Done,

    /// <summary>It does not take place.</summary>
    CalledOff,
}

/// <summary>Whether a box came.</summary>
public enum Arrival
{
    /// <summary>It is here.</summary>
    Arrived,

    /// <summary>It was to come, and did not.</summary>
    NotArrived,
}

/// <summary>What was done to something that is in service.</summary>
public enum ServiceKind
{
    /// <summary>The whole of it is another one now.</summary>
    Replaced,

    /// <summary>A unit has another motor.</summary>
    MotorReplaced,

    /// <summary>A part of it is another one, and neither its motor nor its radio.</summary>
    PartReplaced,

    /// <summary>A remote or a unit has another battery.</summary>
    BatteryChanged,

    /// <summary>It was mended, and no part of it is another one.</summary>
    Repaired,

    /// <summary>The house was looked through, as once a year.</summary>
    YearlyVisit,

    /// <summary>It failed, and nothing of it was replaced or repaired yet: it waits for the maker.</summary>
    Failed,
}

/// <summary>What became of a warranty claim.</summary>
public enum ClaimOutcome
{
    /// <summary>It was paid for or made good.</summary>
    Granted,

    /// <summary>A part of it was.</summary>
    PartlyGranted,

    /// <summary>Nothing of it was.</summary>
    Refused,

    /// <summary>Nobody asks for it any more.</summary>
    Withdrawn,
}

/// <summary>How a punch item stands.</summary>
public enum PunchState
{
    /// <summary>To be mended.</summary>
    Open,

    /// <summary>Mended.</summary>
    Done,
}

/// <summary>Which way the motor end of a kind lies, or that it can be ordered either way.</summary>
public enum MotorEnd
{
    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,

    /// <summary>Ordered per unit.</summary>
    Either,
}

/// <summary>What a kind does when it is raised, which decides the clearance it needs.</summary>
public enum RaisedForm
{
    /// <summary>It winds on a tube.</summary>
    Roll,

    /// <summary>It stacks at the head.</summary>
    Stack,
}

/// <summary>A month of the year.</summary>
public enum Month
{
    /// <summary>January.</summary>
    January,

    /// <summary>February.</summary>
    February,

    /// <summary>March.</summary>
    March,

    /// <summary>April.</summary>
    April,

    /// <summary>May.</summary>
    May,

    /// <summary>June.</summary>
    June,

    /// <summary>July.</summary>
    July,

    /// <summary>August.</summary>
    August,

    /// <summary>September.</summary>
    September,

    /// <summary>October.</summary>
    October,

    /// <summary>November.</summary>
    November,

    /// <summary>December.</summary>
    December,
}
