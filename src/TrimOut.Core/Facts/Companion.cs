namespace TrimOut.Core.Facts;

/// <summary>Fields that stand beside a fact's own field and say more about its value.</summary>
public static class Companion
{
    /// <summary>Beside a reading: the instrument it was taken with.</summary>
    public static string Meter(string field) => field + "#meter";

    /// <summary>Beside a kit value: <c>yes</c> when somebody held it against the maker's sheet.</summary>
    public static string Checked(string field) => field + "#checked";
}
