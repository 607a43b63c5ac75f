using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What is known about the job as a whole.</summary>
public static class HouseFacts
{
    private static readonly Declare Of = new(ItemKind.House);

    public static readonly Fact<string> Name = Of.Text("name", "House", "What everybody calls this job.");
    public static readonly Fact<string> Client = Of.Text("client", "Client", "Who owns the house.");
    public static readonly Fact<string> Address = Of.Text("address", "Address", "Where it stands.");
    public static readonly Fact<string> SiteContact = Of.Text("site-contact", "Site contact", "Whom to call on site, with the number.");
    public static readonly Fact<string> Crew = Of.Text("crew", "Crew", "Who does the work.");
    public static readonly Fact<DisplayUnits> Units = Of.Choice<DisplayUnits>("units", "Units", "What lengths are shown in, and what a bare number means.");
    public static readonly Fact<Dwelling> Dwelling = Of.Choice<Dwelling>("dwelling", "Dwelling",
        "One- or two-family houses have easier cable rules than multi-family buildings.");
    public static readonly Fact<string> CodeInForce = Of.Text("code-in-force", "Code in force",
        "The wiring rules that the local authority enforces, with the edition.");
    public static readonly Fact<decimal> Latitude = Of.Number("latitude", "Latitude", "Degrees north; south is negative.", null, -90, 90);
    public static readonly Fact<decimal> Longitude = Of.Number("longitude", "Longitude", "Degrees east; west is negative.", null, -180, 180);
    public static readonly Fact<string> TimeZone = Of.Zone("time-zone", "Time zone",
        "Whose clocks the house goes by: a continent and a city, such as America/Denver.");
    public static readonly Fact<string> Meter = Of.Text("meter", "Meter in use", "The instrument that readings are taken with from now on.");
    public static readonly Fact<Resistance> MeterLeads = Of.LeadOhms("meter-leads", "Meter leads",
        "What the meter in use shows with its leads held together; kept with each loop reading from now on. 0 where they are taken off.");
    public static readonly Fact<Resistance> MeterStep = Of.LeadOhms("meter-step", "Meter's last digit",
        "One step of its last digit on ohms, such as 0.01 or 0.1; kept with each loop reading from now on, and decides how near it must come.");
    public static readonly Fact<Temperature> CableAtTest = Of.Degrees("cable-at-test", "Cable temp at tests",
        "How warm the cables are while loops are read; kept with each loop reading from now on. Warm copper reads more.");
    public static readonly Fact<int> OldestPaint = Of.Count("oldest-paint", "Oldest paint, year",
        "The year of the oldest paint that is drilled or sanded; in a new house the year in which it is built.", Phase.WalkThrough, 1500, 2200);
    public static readonly Fact<string> PaintTested = Of.Evidence("paint-tested", "Paint tested for lead",
        "Who tested it, and what was found.", Phase.WalkThrough);
    public static readonly Fact<int> Openings = Of.Count("openings", "Openings, counted",
        "How many openings stand on the architect's schedule, or were counted from outside; windows left out on purpose count too.",
        Phase.WalkThrough, 1, 999);
    public static readonly Fact<string> DrillGuard = Of.Evidence("drill-guard", "Eye/dust protection",
        "What protects whoever drills, and whoever lives there, from chips and dust.", Phase.RoughIn);
    public static readonly Fact<DateOnly> FramingOn = Of.Date("framing-on", "Framing walk", "When the framing is open to walk.", Phase.WalkThrough);
    public static readonly Fact<DateOnly> DrywallOn = Of.Date("drywall-on", "Drywall starts", "After this day a mistake costs a wall.", Phase.RoughIn);
    public static readonly Fact<DateOnly> PaintedOn = Of.Date("painted-on", "Painted", "When the finished openings can be measured.", Phase.CloseIn);
    public static readonly Fact<DateOnly> HandoverOn = Of.Date("handover-on", "Handover", "When the owner moves in.", Phase.Handover);
    public static readonly Fact<int> OrderLead = Of.Count("order-lead", "Order takes, days",
        "How many days the maker takes from the order to the boxes, as the supplier says.", Phase.Order, 1, 365);
    public static readonly Fact<int> PartsLead = Of.Count("parts-lead", "Parts take, days",
        "How many days the supplier takes from the order to the house, of all but the units.", null, 1, 365);
    public static readonly Fact<int> FittingDays = Of.Count("fitting-days", "Fitting takes, days",
        "How many days before the handover the first unit is hung, so that all is hung, powered, paired, set and shown by then.", null, 1, 365);
    public static readonly Fact<DateOnly> RoughInPartsOn = Of.Date("rough-in-parts-on", "Rough-in parts ordered",
        "When cable, boxes and what else the pull takes were called off.");
    public static readonly Fact<DateOnly> HangPartsOn = Of.Date("hang-parts-on", "Hang parts ordered",
        "When brackets, screws and what else hanging takes were called off; each unit has a day of its own.");
    public static readonly Fact<DateOnly> PowerPartsOn = Of.Date("power-parts-on", "Power parts ordered",
        "When panels, supplies and connectors were called off.");
    public static readonly Fact<DateOnly> PairPartsOn = Of.Date("pair-parts-on", "Pair parts ordered", "When hubs, remotes and wall plates were called off.");
    public static readonly Fact<SpareCounts> Spares = Of.Spares("spares", "Spare parts",
        "How many of what to have more than the house takes, by the names on the parts list, such as 2 Handheld, 10 % screws.");
    public static readonly Fact<decimal> CableAllowance = Of.Number("cable-allowance", "Cable allowance, %",
        "Added to the legs for bends and slack: a crew's own figure.", Phase.RoughIn, 0, 100);
    public static readonly Fact<Temperature> ConductorTemperature = Of.Degrees("conductor-temperature", "Max cable temp",
        "The hottest that the cable gets, in degrees Celsius, such as in a roof space.", Phase.RoughIn);
    public static readonly Fact<Voltage> DropAllowed = Of.Volts("drop-allowed", "Voltage drop allowed",
        "The volts that may be lost out and back on a run: your own loop budget, for as long as no sheet says more.", Phase.RoughIn, 0.01m, 60);
    public static readonly Fact<Current> BudgetCurrent = Of.Amps("budget-current", "Design current",
        "The current of one run that the loop budget is worked out with.", Phase.RoughIn);
    public static readonly Fact<Length> PanelTail = Of.Opening("panel-tail", "Tail at panel, planned",
        "The tail that is left in the mechanical room where none was measured yet.", Phase.RoughIn, 0, 600);
    public static readonly Fact<Length> CutLoss = Of.Opening("cut-loss", "Waste per cut",
        "Cable lost each time a box is cut: the end that is trimmed and the loose turn.", Phase.RoughIn, 0, 120);
    public static readonly Fact<Length> SpreadLimit = Of.Opening("spread-limit", "3 measures may differ by",
        "Three widths or three heights that differ by more are measured again.", Phase.Measure, 0, 4);
    public static readonly Fact<Length> SquareLimit = Of.Opening("square-limit", "Out of square by at most",
        "Diagonals or opposite sides that differ by more show in the finished work.", Phase.Measure, 0, 4);
    public static readonly Fact<Length> PassLimit = Of.Opening("pass-limit", "2nd measure may differ by",
        "A second measure that differs by more is taken again.", Phase.Measure, 0, 4);
    public static readonly Fact<DateOnly> DemonstratedOn = Of.Date("demonstrated-on", "Demonstrated on",
        "When every unit was shown to the owner.", Phase.Handover);
    public static readonly Fact<string> DemonstratedTo = Of.Somebody("demonstrated-to", "Demonstrated to", "Who saw it.", Phase.Handover);
    public static readonly Fact<string> PowerCutTold = Of.Evidence("power-cut-told", "In a power cut",
        "What the owner was told and shown that each unit does without power, and how it is moved by hand.", Phase.Handover, Declare.Note);
    public static readonly Fact<DateOnly> BinderGivenOn = Of.Date("binder-given-on", "Binder given on", "When the binder was handed over.", Phase.Handover);
    public static readonly Fact<string> BookAt = Of.Text("book-at", "Book on the web",
        "Web address under which the owner keeps the book, such as https://...; codes on the card and the panel door then lead there.", Phase.Handover);
    public static readonly Fact<string> OpenItemsAgreed = Of.Text("open-items-agreed", "Open items agreed",
        "What was agreed about the items still open, or none.", Phase.Handover, Declare.Note);
    public static readonly Fact<string> AcceptedBy = Of.Somebody("accepted-by", "Accepted by", "Who signs for the owner.", Phase.Handover);
    public static readonly Fact<DateOnly> AcceptedOn = Of.Date("accepted-on", "Accepted on", "When it was signed.", Phase.Handover);
    public static readonly Fact<string> WarrantyTerm = Of.Text("warranty-term", "Warranty, how long",
        "For how long the crew answers for its work, such as two years.", Phase.Handover);
    public static readonly Fact<string> WarrantyCovers = Of.Text("warranty-covers", "Warranty covers",
        "What is repaired or replaced without charge, and what is not.", Phase.Handover, Declare.Note);
    public static readonly Fact<DateOnly> WarrantyFrom = Of.Date("warranty-from", "Warranty from", "The day it runs from.", Phase.Handover);
    public static readonly Fact<string> WarrantyCall = Of.Text("warranty-call", "Warranty, whom to call",
        "Who is called when something fails, with the number.", Phase.Handover);
    public static readonly Fact<decimal> HoursWalkThrough = Of.PhaseHours(Phase.WalkThrough);
    public static readonly Fact<decimal> HoursRoughIn = Of.PhaseHours(Phase.RoughIn);
    public static readonly Fact<decimal> HoursCloseIn = Of.PhaseHours(Phase.CloseIn);
    public static readonly Fact<decimal> HoursMeasure = Of.PhaseHours(Phase.Measure);
    public static readonly Fact<decimal> HoursOrder = Of.PhaseHours(Phase.Order);
    public static readonly Fact<decimal> HoursReceive = Of.PhaseHours(Phase.Receive);
    public static readonly Fact<decimal> HoursHang = Of.PhaseHours(Phase.Hang);
    public static readonly Fact<decimal> HoursPower = Of.PhaseHours(Phase.Power);
    public static readonly Fact<decimal> HoursPair = Of.PhaseHours(Phase.Pair);
    public static readonly Fact<decimal> HoursLimits = Of.PhaseHours(Phase.Limits);
    public static readonly Fact<decimal> HoursHandover = Of.PhaseHours(Phase.Handover);
    public static readonly Fact<StepMark> Step = Of.Marks();

    internal static readonly Fact[] All =
    [
        Name, Client, Address, SiteContact, Crew, Units, Dwelling, CodeInForce, Latitude, Longitude, TimeZone, Meter, MeterLeads, MeterStep,
        CableAtTest, Openings, OldestPaint, PaintTested, DrillGuard,
        FramingOn, DrywallOn, PaintedOn, HandoverOn, OrderLead, PartsLead, FittingDays, RoughInPartsOn, HangPartsOn, PowerPartsOn, PairPartsOn, Spares,
        CableAllowance, ConductorTemperature, DropAllowed, BudgetCurrent, PanelTail, CutLoss,
        SpreadLimit, SquareLimit, PassLimit,
        DemonstratedOn, DemonstratedTo, PowerCutTold, BinderGivenOn, BookAt, OpenItemsAgreed, AcceptedBy, AcceptedOn,
        WarrantyTerm, WarrantyCovers, WarrantyFrom, WarrantyCall,
        HoursWalkThrough, HoursRoughIn, HoursCloseIn, HoursMeasure, HoursOrder, HoursReceive, HoursHang, HoursPower, HoursPair, HoursLimits, HoursHandover,
        Step,
    ];

    /// <summary>The hours of a phase as somebody typed them for the whole house.</summary>
    public static Fact<decimal> HoursOf(Phase phase) => phase switch
    {
        Phase.WalkThrough => HoursWalkThrough,
        Phase.RoughIn => HoursRoughIn,
        Phase.CloseIn => HoursCloseIn,
        Phase.Measure => HoursMeasure,
        Phase.Order => HoursOrder,
        Phase.Receive => HoursReceive,
        Phase.Hang => HoursHang,
        Phase.Power => HoursPower,
        Phase.Pair => HoursPair,
        Phase.Limits => HoursLimits,
        Phase.Handover => HoursHandover,
        _ => throw new ArgumentOutOfRangeException(nameof(phase), phase, "No phase."),
    };
}
