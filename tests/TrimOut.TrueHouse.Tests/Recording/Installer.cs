using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Recording.Pages;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Recording;

/// <summary>A person with a tape and a meter who walks through a house, stage by stage, and writes down what there is to see.</summary>
public sealed class Installer
{
    private static readonly Dictionary<Stage, Action<Installer>> Pages = new()
    {
        [Stage.Sheets] = SheetsPage.Write,
        [Stage.WalkThrough] = WalkThroughPage.Write,
        [Stage.Routed] = RoutedPage.Write,
        [Stage.Pulled] = PulledPage.Write,
        [Stage.CloseIn] = CloseInPage.Write,
        [Stage.Measured] = MeasuredPage.Write,
        [Stage.Sized] = OrderPages.WriteSized,
        [Stage.Ordered] = OrderPages.WriteOrdered,
        [Stage.Received] = ReceivedPage.Write,
        [Stage.Hung] = HungPage.Write,
        [Stage.Powered] = PoweredPage.Write,
        [Stage.Paired] = PairedPage.Write,
        [Stage.Limits] = LimitsPage.Write,
        [Stage.Handover] = HandoverPage.Write,
        [Stage.Service] = ServicePage.Write,
    };

    /// <summary>An installer before a house.</summary>
    /// <param name="truth">The house.</param>
    /// <param name="meterDigit">The last place of the meter, in ohms and volts.</param>
    public Installer(RealHouse truth, double meterDigit = 0.01)
    {
        Truth = truth;
        Book = new Book(truth.Metric, truth.Slips);
        Tape = new Tape(truth.Metric, truth.Noise);
        Meter = new Meter(truth.Noise, meterDigit);
    }

    /// <summary>The house as it is.</summary>
    public RealHouse Truth { get; }

    /// <summary>What is written of it.</summary>
    public Book Book { get; }

    /// <summary>The tape in hand.</summary>
    public Tape Tape { get; }

    /// <summary>The meter in hand.</summary>
    public Meter Meter { get; }

    /// <summary>Writes down one stage.</summary>
    public void Write(Stage stage)
    {
        Book.Turn(stage, Truth.Days[stage]);
        Pages[stage](this);
        foreach (var besides in Truth.Slips.Besides(stage))
            besides(this);
    }

    /// <summary>Marks the steps of a phase for all units.</summary>
    internal void MarkUnits(Phase phase, params string[] except)
    {
        foreach (var unit in Truth.Units.Where(u => Book.Has(ItemKind.Unit, u.Key)))
            Book.MarkAll(Book.Unit(unit.Key), unit.Key, phase, except);
    }

    /// <summary>Marks the steps of a phase for the house itself.</summary>
    internal void MarkHouse(Phase phase) => Book.MarkAll(new JobItself(Book.House), Book.JobItself, phase);

    /// <summary>A choice as it is typed.</summary>
    internal static string Word<T>(T choice)
        where T : struct, Enum => KebabCase.Of(choice);

    /// <summary>A number as it is typed.</summary>
    internal static string Number(double number) => number.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>A day as it is typed.</summary>
    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
