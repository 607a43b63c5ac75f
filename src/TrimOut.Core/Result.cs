namespace TrimOut.Core;

/// <summary>Either a value or the reason why there is none, in words for the person who typed.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
/// <remarks>What a person types is often wrong and that is no exception: whoever asks must look at <see cref="Ok"/>.</remarks>
public readonly record struct Result<T>
{
    private readonly T? _value;

    private Result(T? value, string? reason)
    {
        _value = value;
        Reason = reason;
    }

    /// <summary>Whether there is a value.</summary>
    public bool Ok => Reason is null;

    /// <summary>Why there is no value; null when there is one.</summary>
    public string? Reason { get; }

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none; <see cref="Reason"/> says why.</exception>
    public T Value => Ok ? _value! : throw new InvalidOperationException(Reason);

    /// <summary>A result that has a value.</summary>
    public static implicit operator Result<T>(T value) => new(value, null);

    /// <summary>A result that has none.</summary>
    public static implicit operator Result<T>(Refusal refusal) => new(default, refusal.Reason);

    /// <summary>Goes on with the value, or passes the reason along.</summary>
    public Result<TOther> Then<TOther>(Func<T, Result<TOther>> next) => Ok ? next(Value) : new Refusal(Reason!);
}

/// <summary>Why something typed or asked for can't be had: what is wrong and what to do.</summary>
/// <param name="Reason">One sentence for the user.</param>
public readonly record struct Refusal(string Reason);
