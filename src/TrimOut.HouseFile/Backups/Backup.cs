using System.Globalization;

namespace TrimOut.HouseFile.Backups;

/// <summary>A backup: a whole house file under the moment when it was made.</summary>
/// <param name="Path">The file.</param>
/// <param name="MadeAt">When, in universal time, as the clock had it.</param>
/// <param name="Order">Its place among all backups of the house in the order of saving; 0 for one of a time when that was not kept.</param>
public sealed record Backup(string Path, DateTime MadeAt, long Order)
{
    private const string Dated = "yyyy-MM-dd'T'HHmmss'Z'";

    /// <summary>The order of saving: by the clock only among those that have no number.</summary>
    public static IComparer<Backup> BySaving { get; } =
        Comparer<Backup>.Create((a, b) => a.Order != b.Order ? a.Order.CompareTo(b.Order) : a.MadeAt != b.MadeAt ? a.MadeAt.CompareTo(b.MadeAt)
            : string.CompareOrdinal(a.Path, b.Path));

    /// <summary>The name of a new backup's file. The letters at its end are of what it holds, so that two of one name are the same.</summary>
    internal static string NameOf(DateTime madeAt, long order, string seal) =>
        string.Create(CultureInfo.InvariantCulture, $"{madeAt.ToString(Dated, CultureInfo.InvariantCulture)}-{order}-{seal}{HouseFileNames.Ending}");

    /// <summary>Reads the name of a file; null when it is no backup's.</summary>
    internal static Backup? Read(string file)
    {
        var parts = System.IO.Path.GetFileNameWithoutExtension(file).Split('-', 5);
        if (parts.Length < 3 || !DateTime.TryParseExact(string.Join('-', parts.Take(3)), Dated, CultureInfo.InvariantCulture,
            DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal, out var at))
            return null;
        if (parts.Length == 3)
            return new Backup(file, at, 0);
        return long.TryParse(parts[3], NumberStyles.None, CultureInfo.InvariantCulture, out var order) && order < int.MaxValue
            ? new Backup(file, at, order) : null;
    }
}
