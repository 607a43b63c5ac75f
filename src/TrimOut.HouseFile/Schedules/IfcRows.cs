using System.Globalization;
using System.Text;
using System.Text.Unicode;
using TrimOut.Core;

namespace TrimOut.HouseFile.Schedules;

/// <summary>Reads the windows of a building model, IFC 2x3 or IFC 4 (ISO 16739) as STEP text, as rows of a schedule.</summary>
internal static class IfcRows
{
    private static readonly string[] Wanted =
    [
        "IFCWINDOW", "IFCWINDOWSTANDARDCASE", "IFCBUILDINGSTOREY", "IFCSPACE", "IFCRELCONTAINEDINSPATIALSTRUCTURE", "IFCRELFILLSELEMENT", "IFCRELVOIDSELEMENT",
        "IFCRELSPACEBOUNDARY", "IFCRELSPACEBOUNDARY1STLEVEL", "IFCRELSPACEBOUNDARY2NDLEVEL", "IFCRELDEFINESBYPROPERTIES", "IFCPROPERTYSET",
        "IFCPROPERTYSINGLEVALUE", "IFCSIUNIT", "IFCCONVERSIONBASEDUNIT", "IFCUNITASSIGNMENT", "IFCMEASUREWITHUNIT", "IFCLOCALPLACEMENT",
        "IFCAXIS2PLACEMENT3D", "IFCGEOMETRICREPRESENTATIONCONTEXT",
    ];

    private static readonly string[] Header = ["Tag", "Room", "Floor", "Width", "Height", "Facing", "Note"];

    /// <summary>What is said of where windows of a model look out to.</summary>
    public const string AboutFacing =
        "the model does not say which side of a wall is outside: each window is taken to look away from the middle of its floor, so look at \"Facing\"";

    /// <summary>Whether a file is a model.</summary>
    public static bool IsOne(byte[] file) => Encoding.ASCII.GetString(file.AsSpan(0, Math.Min(file.Length, 64))).TrimStart('\ufeff', '?', ' ', '\r', '\n')
        .StartsWith(StepText.Begins, StringComparison.Ordinal);

    /// <summary>Its windows, a row each below a header, sizes in millimetres; or why there are none.</summary>
    public static Result<IReadOnlyList<SheetRow>> Read(byte[] file)
    {
        // The standard asks for ASCII; who writes more writes UTF-8 or, of old, Latin-1.
        var text = Utf8.IsValid(file) ? Encoding.UTF8.GetString(file) : Encoding.Latin1.GetString(file);
        var wanted = Wanted.ToHashSet(StringComparer.Ordinal);
        var model = new IfcModel(StepText.Entities(text, wanted.Contains));
        if (model.Windows.Count == 0)
            return new Refusal("The model has no windows (IFCWINDOW). Nothing was imported.");
        if (model.Windows.Count > CsvRows.MostRows)
            return new Refusal($"The model has more than {CsvRows.MostRows} windows: that is no house's. Nothing was imported.");
        if (model.MillimetresPerUnit is not { } unit)
            return new Refusal("The model does not say in which unit its lengths are (IFCUNITASSIGNMENT). Nothing was imported.");
        // Points and directions are most of a model; only those of the placements are read.
        model.Place(StepText.Entities(text, t => t is "IFCCARTESIANPOINT" or "IFCDIRECTION"));
        var facing = IfcFacing.Of(model);
        var rows = new List<SheetRow> { new(1, Header) };
        rows.AddRange(model.Windows.Select(w => new SheetRow(w.Line,
        [
            model.TagOf(w), model.RoomOf(w) ?? "", model.StoreyOf(w)?.Text(2) ?? "", Size(w.Number(9), unit), Size(w.Number(8), unit),
            facing.TryGetValue(w.Id, out var azimuth) ? azimuth.ToString(CultureInfo.InvariantCulture) : "", w.Text(4) ?? "",
        ])));
        return rows;
    }

    private static string Size(double? length, double unit) => length is { } some and > 0
        ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(some * unit, 1)} mm") : "";
}
