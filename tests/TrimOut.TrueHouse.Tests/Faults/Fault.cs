using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults;

/// <summary>One thing that goes wrong in life. It changes what is true, or what an installer writes of it; nothing here asks TrimOut.</summary>
public abstract class Fault
{
    /// <summary>Its name, from the name of its class.</summary>
    public string Id { get; }

    /// <summary>A fault, named as its class is.</summary>
    protected Fault() => Id = KebabCase.Of(GetType().Name);

    /// <summary>What goes wrong.</summary>
    public abstract string Goes { get; }

    /// <summary>What it costs when it is found later.</summary>
    public abstract string Costs { get; }

    /// <summary>When it goes wrong.</summary>
    public abstract Stage In { get; }

    /// <summary>The reading or the step that would show it, where no recorded fact does.</summary>
    public virtual string? WouldShow => null;

    /// <summary>Whether only a stop is loud enough: it can hurt somebody, or destroys something.</summary>
    public virtual bool AsksForAStop => false;

    /// <summary>Checks that may speak of the place because of it, and do not name it.</summary>
    public virtual IReadOnlyList<string> DoNotNameIt => [];

    /// <summary>Lets it happen.</summary>
    /// <returns>Where, and which recorded facts show it; null when this house can't have it.</returns>
    public abstract Trace? Strike(RealHouse house, Dice dice);

    /// <summary>A trace in which recorded facts show the fault.</summary>
    /// <param name="about">The windows, units or parts that it is about, by name.</param>
    /// <param name="shownBy">The facts which, all together, show it to who can read them.</param>
    protected static Trace At(string about, params (string Name, Fact Fact)[] shownBy) => new([about], shownBy);

    /// <summary>A trace that marks, missing entries or later entries show from a stage on.</summary>
    protected static Trace From(Stage stage, params string[] about) => new(about, []) { From = stage };

    /// <summary>A trace that no recorded fact shows.</summary>
    protected static Trace Unseen(params string[] about) => new(about, []);
}

/// <summary>What a fault did to a house.</summary>
/// <param name="About">The windows, units or parts that it is about, by name.</param>
/// <param name="ShownBy">The facts which, all together, show it; none where no fact does.</param>
public sealed record Trace(IReadOnlyList<string> About, IReadOnlyList<(string Name, Fact Fact)> ShownBy)
{
    /// <summary>The stage from which on marks or missing entries show it, where values alone do not.</summary>
    public Stage? From { get; init; }

    /// <summary>How large its effect is in the unit of its reading; 1 where nothing is measured.</summary>
    public double Effect { get; init; } = 1;

    /// <summary>The most by which the readings may be off, in the same unit.</summary>
    public double Error { get; init; }

    /// <summary>Whether who reads carefully can tell it from the error of the readings.</summary>
    public bool PastError => Effect > Error;

    /// <summary>This trace with the size of the effect beside the error of the readings.</summary>
    public Trace Of(double effect, double error) => this with { Effect = effect, Error = error };

    /// <summary>This trace, about another place too.</summary>
    public Trace And(params string[] about) => this with { About = [.. About, .. about] };
}
