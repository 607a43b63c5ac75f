using TrimOut.Core.Checks;
using TrimOut.Core.Houses;

namespace TrimOut.TrueHouse.Tests.Recording;

/// <summary>One thing that TrimOut says of a house. This file is the only one of the project that knows how checks report.</summary>
/// <param name="Check">The id of the check.</param>
/// <param name="Severity">How bad it is.</param>
/// <param name="Subject">The id of the item that it is about.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Mend">What to do now.</param>
/// <param name="Item">The item whose field mends it.</param>
/// <param name="Field">That field.</param>
public sealed record Said(string Check, Severity Severity, string Subject, string Message, string Mend, string Item, string Field)
{
    /// <summary>All that is said of a house and not waived.</summary>
    public static IReadOnlyList<Said> Of(House house) =>
    [
        .. CheckReport.Of(house).Findings.Where(f => f.Open)
            .Select(f => new Said(f.Check.Id, f.Check.Severity, f.Subject.Id, f.Found.Message.In(house), f.Found.Mend.In(house), f.Found.Mends.Item,
            f.Found.Mends.Field)),
    ];

    /// <summary>Whether it is a stop.</summary>
    public bool IsStop => Severity == Severity.Stop;

    /// <summary>Whether it is a caution.</summary>
    public bool IsCaution => Severity == Severity.Caution;

    /// <summary>Its severity as a word.</summary>
    public string Word => KebabCase.Of(Severity);

    /// <summary>Stops weigh more than cautions, cautions more than notes.</summary>
    public int Weight => 2 - (int)Severity;
}
