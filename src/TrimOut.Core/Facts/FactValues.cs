using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts;

/// <summary>Typed access to an item's facts: null when a fact is missing.</summary>
public static class FactValues
{
    /// <summary>The value of a fact.</summary>
    public static T? Get<T>(this Item item, Fact<T> fact)
        where T : struct => item.Latest(fact)?.Value as T?;

    /// <summary>The value of a keyed fact for one key.</summary>
    public static T? Get<T>(this Item item, Fact<T> fact, string key)
        where T : struct => item.Latest(fact.Field(key))?.Value as T?;

    /// <summary>All values of a keyed fact by key, in the order of the keys.</summary>
    public static IEnumerable<KeyValuePair<string, T>> All<T>(this Item item, Fact<T> fact)
        where T : notnull
    {
        var prefix = fact.Field("").Length;
        foreach (var (field, head) in item.AllOf(fact))
        {
            if (head.Value is T value)
                yield return new(field[prefix..], value);
        }
    }
}

/// <summary>Typed access to facts whose values are objects: null when a fact is missing.</summary>
public static class FactObjects
{
    /// <summary>The value of a fact.</summary>
    public static T? Get<T>(this Item item, Fact<T> fact)
        where T : class => item.Latest(fact)?.Value as T;

    /// <summary>The value of a keyed fact for one key.</summary>
    public static T? Get<T>(this Item item, Fact<T> fact, string key)
        where T : class => item.Latest(fact.Field(key))?.Value as T;
}
