namespace TrimOut.Core;

/// <summary>Either a value or the reason why there is none, in words for the person who typed.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
/// <remarks>What a person types is often wrong and that is no exception: whoever asks must look at <see cref="Ok"/>.</remarks>
public readonly record struct Result<T>
{
    private const string NeverGiven = "No answer was given.";

    private readonly T? _value;
    private readonly string? _reason;

    private Result(T? value, bool ok, string? reason) => (_value, Ok, _reason) = (value, ok, reason);

    /// <summary>Whether there is a value. A result that nobody gave, such as an element of a new array, has none.</summary>
    public bool Ok { get; }

    /// <summary>Why there is no value; null when there is one.</summary>
    public string? Reason => Ok ? null : _reason ?? NeverGiven;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none; <see cref="Reason"/> says why.</exception>
    public T Value => Ok ? _value! : throw new InvalidOperationException(Reason);

    /// <summary>A result that has a value.</summary>
    public static implicit operator Result<T>(T value) => new(value, true, null);

    /// <summary>A result that has none.</summary>
    public static implicit operator Result<T>(Refusal refusal) => new(default, false, refusal.Reason);

    /// <summary>Goes on with the value, or passes the reason along.</summary>
    public Result<TOther> Then<TOther>(Func<T, Result<TOther>> next) => Ok ? next(Value) : new Refusal(Reason!);
}

/// <summary>Several results at once.</summary>
public static class Results
{
    /// <summary>All values, or the first reason why one of them is not there.</summary>
    public static Result<IReadOnlyList<T>> All<T>(this IEnumerable<Result<T>> results)
    {
        var values = new List<T>();
        foreach (var result in results)
        {
            if (!result.Ok)
                return new Refusal(result.Reason!);
            values.Add(result.Value);
        }
        return values;
    }
}

/// <summary>Why something typed or asked for can't be had: what is wrong and what to do.</summary>
/// <param name="Reason">One sentence for the user.</param>
public readonly record struct Refusal(string Reason);
