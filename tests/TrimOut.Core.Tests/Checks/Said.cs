using TrimOut.Core.Checks;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Tests.Checks;

/// <summary>A finding as it reads in English, in the house's units.</summary>
internal sealed record Said(string Message, string Mend, FieldRef Mends, Working? Working, Outcome.Found Found)
{
    public static Said Of(Outcome.Found found, House house) => new(found.Message.In(house), found.Mend.In(house), found.Mends, found.Working, found);

    /// <summary>The figures that it was worked out from, as they are shown beside it.</summary>
    public string Worked => string.Join(", ", Working!.Inputs.Select(i => $"{i.Name} {i.Value}"));
}
