namespace TrimOut.Core.Facts;

/// <summary>Fields that stand beside a fact's own field and say more about its value.</summary>
public static class Companion
{
    /// <summary>Beside a reading: the instrument it was taken with.</summary>
    public static string Meter(string field) => field + "#meter";

    /// <summary>Beside a loop reading: what the meter's leads add to it, in ohms.</summary>
    public static string Leads(string field) => field + "#leads";

    /// <summary>Beside a loop reading: how warm the cable was, in degrees Celsius.</summary>
    public static string CableAt(string field) => field + "#cable-at";

    /// <summary>Beside a loop reading: what one step of the meter's last digit is, in ohms.</summary>
    public static string MeterStep(string field) => field + "#meter-step";

    /// <summary>Beside a kit value: <c>yes</c> when somebody held it against the maker's sheet.</summary>
    public static string Checked(string field) => field + "#checked";

    /// <summary>
    /// Beside a kit value: <c>yes</c> when a blank means that nobody looked yet. Without it a blank means that there is none, as in kits of before there was
    /// this.
    /// </summary>
    public static string Asked(string field) => field + "#asked";

    /// <summary>Beside a value that freezes what stands around it: how far whoever put it had seen the history.</summary>
    public static string Seen(string field) => field + "#seen";

    /// <summary>The field that a companion stands beside; null for a field that is none.</summary>
    public static string? Beside(string field) =>
        field.IndexOf('#', StringComparison.Ordinal) is > 0 and var at
            && field[at..] is "#meter" or "#leads" or "#cable-at" or "#meter-step" or "#checked" or "#asked" or "#seen"
            ? field[..at]
            : null;
}
