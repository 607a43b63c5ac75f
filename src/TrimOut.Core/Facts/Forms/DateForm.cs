using System.Globalization;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts.Forms;

/// <summary>A day: typed as people write it, stored as year-month-day.</summary>
internal sealed class DateForm : Form<DateOnly>
{
    private const string Stored = "yyyy-MM-dd";

    public override string Hint => "2026-03-14, today, +3, fri";

    public override Result<DateOnly> Read(string typed, House house) => DateText.Read(typed);

    public override Result<DateOnly> Read(string typed, House house, DateOnly? today) => DateText.Read(typed, today);

    public override string Write(DateOnly value) => value.ToString(Stored, CultureInfo.InvariantCulture);

    public override Result<DateOnly> Decode(string stored) =>
        DateOnly.TryParseExact(stored, Stored, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day
        : new Refusal($"\"{stored}\" is no date.");

    public override string Show(DateOnly value, House house) => Write(value);
}
