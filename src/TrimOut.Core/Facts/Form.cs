using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts;

/// <summary>How values of one sort are typed, stored and shown.</summary>
/// <typeparam name="T">The value's type.</typeparam>
public abstract class Form<T>
    where T : notnull
{
    /// <summary>Reads what a person typed.</summary>
    public abstract Result<T> Read(string typed, House house);

    /// <summary>The same where it is known which day it is, for what may be said from there.</summary>
    public virtual Result<T> Read(string typed, House house, DateOnly? today) => Read(typed, house);

    /// <summary>The stored form: exact, the same in every culture and unit setting.</summary>
    public abstract string Write(T value);

    /// <summary>Reads the stored form.</summary>
    public abstract Result<T> Decode(string stored);

    /// <summary>The shown form, in the house's units.</summary>
    public abstract string Show(T value, House house);

    /// <summary>Whether its values are a few named ones, which other languages name differently.</summary>
    public virtual bool IsChoice => false;

    /// <summary>What it may be, when that is a list: each as stored and as shown.</summary>
    public virtual IReadOnlyList<Option> Options(House house) => [];

    /// <summary>A short hint at what may be typed.</summary>
    public abstract string Hint { get; }

    /// <summary>The same in a house of some units: its own first.</summary>
    public virtual string HintIn(Units.DisplayUnits units) => Hint;
}

/// <summary>One of a list of possible values.</summary>
/// <param name="Stored">Its stored form.</param>
/// <param name="Shown">Its shown form.</param>
public sealed record Option(string Stored, string Shown);
