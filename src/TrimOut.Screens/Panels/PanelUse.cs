using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;

namespace TrimOut.Screens.Panels;

/// <summary>How a panel's outputs are used: only outputs that it has count, and what does not fit is said plainly.</summary>
/// <param name="Outputs">The outputs that it has; null while its type does not say.</param>
/// <param name="Used">Outputs of those with a run.</param>
/// <param name="Shared">Outputs with more than one run.</param>
/// <param name="NotThere">Outputs that runs are said to be on, and that it does not have.</param>
/// <param name="Most">The outputs that it has, as they are shown.</param>
internal sealed record PanelUse(int? Outputs, int Used, IReadOnlyList<int> Shared, IReadOnlyList<int> NotThere, string Most)
{
    /// <summary>The use of a panel.</summary>
    public static PanelUse Of(Panel panel)
    {
        var outputs = panel.Type?.Outputs;
        var runs = panel.Runs.Where(r => r.Output is not null).ToLookup(r => r.Output!.Value);
        return new(outputs,
            runs.Count(r => r.Key <= (outputs ?? int.MaxValue)),
            [.. runs.Where(r => r.Skip(1).Any()).Select(r => r.Key)],
            [.. runs.Where(r => r.Key > outputs).Select(r => r.Key)], UncheckedValues.Count(panel.Type, PanelTypeFacts.Outputs));
    }

    /// <summary>The same of the outputs that it has alone.</summary>
    public string Fits => string.Create(CultureInfo.InvariantCulture, $"{Used} of {Most} outputs used");

    /// <summary>In a few words, as it follows the panel's name.</summary>
    public string InWords
    {
        get
        {
            var words = Fits;
            if (Shared.Count > 0)
                words += $", {Listed(Shared)} shared";
            return NotThere.Count == 0 ? words : $"{words}, {Listed(NotThere)} is not on it";
        }
    }

    private static string Listed(IReadOnlyList<int> outputs) => string.Join(" and ", outputs.Select(o => o.ToString("00", CultureInfo.InvariantCulture)));
}
