using TrimOut.Core.Facts;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>What is wrong with a cable at one place.</summary>
/// <param name="From">How far from its panel end, in metres of cable.</param>
/// <param name="Since">The stage in which it came about.</param>
/// <param name="InLine">Ohms that stand in the way of the current; endless where a conductor is cut. 0 where nothing is in the way.</param>
/// <param name="Across">Ohms from one conductor to the other; endless where they are apart.</param>
public sealed record Damage(double From, Stage Since, double InLine, double Across)
{
    /// <summary>Ohms from one conductor to metal of the building; endless where it touches none.</summary>
    public double ToBuilding { get; init; } = double.PositiveInfinity;

    /// <summary>A staple or a plate that reaches one conductor.</summary>
    public static Damage Touch(double from, Stage since, double ohms) => Joint(from, since, 0) with { ToBuilding = ohms };

    /// <summary>A joint or a bruise.</summary>
    public static Damage Joint(double from, Stage since, double ohms) => new(from, since, ohms, double.PositiveInfinity);

    /// <summary>A cut conductor.</summary>
    public static Damage Cut(double from, Stage since) => Joint(from, since, double.PositiveInfinity);

    /// <summary>The two conductors touch, or leak.</summary>
    public static Damage Short(double from, Stage since, double ohms) => new(from, since, 0, ohms);
}

/// <summary>One stretch of a home run, with what is really around it.</summary>
public sealed class RealLeg
{
    public required double Metres { get; set; }
    public required LegDirection Direction { get; set; }
    public required CablePlace Around { get; set; }

    /// <summary>Whether it goes through what must hold back fire, and who closed the hole around it.</summary>
    public bool FireBarrier { get; set; }
    public string? SealedBy { get; set; }
    public bool SealSeen { get; set; } = true;
}

/// <summary>A cable as it lies in the house: a ladder of resistors with whatever happened to it along its way.</summary>
public sealed class RealCable
{
    public required CableSheet Sheet { get; set; }

    /// <summary>The cable that was really pulled.</summary>
    public required CableSheet Pulled { get; set; }
    public List<RealLeg> Legs { get; init; } = [];

    /// <summary>In metres.</summary>
    public double TailAtPanel { get; set; }

    /// <summary>In millimetres, as all that is measured at a window.</summary>
    public double TailAtWindow { get; set; }
    public double TailFound { get; set; }
    public List<Damage> Damages { get; } = [];

    /// <summary>Whether two lengths were joined on its way.</summary>
    public bool Joined { get; set; }
    public double MainsDistance { get; set; }
    public bool MainsSheathed { get; set; }

    /// <summary>From the side of the hole that is nearest to an edge.</summary>
    public double HoleEdge { get; set; }

    /// <summary>The drill that it was bored with.</summary>
    public double HoleDrill { get; set; } = 19;

    /// <summary>Whether the distance is read to the middle of the hole.</summary>
    public bool HoleReadToMiddle { get; set; }
    public bool Plated { get; set; }
    public int Spares { get; set; } = 1;
    public string LabelAtWindow { get; set; } = "";
    public string LabelAtPanel { get; set; } = "";

    /// <summary>The cable that really comes out under its label in the mechanical room; itself unless two were changed over.</summary>
    public RealCable? ComesOutAs { get; set; }

    /// <summary>Legs together, in metres.</summary>
    public double LegsMetres => Legs.Sum(l => l.Metres);

    /// <summary>All of it, in metres.</summary>
    public double Metres => LegsMetres + TailAtPanel + (TailAtWindow / 1000);

    /// <summary>What stands between its two conductors in the mechanical room.</summary>
    /// <param name="at">When.</param>
    /// <param name="celsius">How warm it is.</param>
    /// <param name="shorted">Whether its window ends are held together; they hang apart otherwise.</param>
    public double Ohms(Stage at, double celsius, bool shorted = true)
    {
        var perMetre = 2 * Pulled.OhmsPerMetre(celsius);
        var (ohms, place) = (shorted ? 0 : double.PositiveInfinity, Metres);
        foreach (var damage in Damages.Where(d => d.Since <= at).OrderByDescending(d => d.From))
        {
            ohms += (perMetre * (place - damage.From)) + damage.InLine;
            if (!double.IsInfinity(damage.Across))
                ohms = double.IsInfinity(ohms) ? damage.Across : damage.Across == 0 ? 0 : ohms * damage.Across / (ohms + damage.Across);
            place = damage.From;
        }
        return ohms + (perMetre * place);
    }

    /// <summary>What stands between its conductors, held together in the mechanical room with the window ends apart, and metal of the building.</summary>
    public double OhmsToBuilding(Stage at, double celsius) =>
        Damages.Where(d => d.Since <= at).Select(d => d.ToBuilding + (d.From * Pulled.OhmsPerMetre(celsius))).Append(double.PositiveInfinity).Min();

    /// <summary>What stands in the way of the current of a unit, out and back.</summary>
    public double InLine(Stage at, double celsius) =>
        (2 * Metres * Pulled.OhmsPerMetre(celsius)) + Damages.Where(d => d.Since <= at).Sum(d => d.InLine);

    /// <summary>Whether the current takes a shorter way.</summary>
    public bool Shorted(Stage at) => Damages.Any(d => d.Since <= at && d.Across < 5);
}
