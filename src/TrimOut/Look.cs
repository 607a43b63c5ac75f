using System.CommandLine;
using TrimOut.Core.History;
using TrimOut.Verbs;

namespace TrimOut;

/// <summary>How a verb looks at houses: the same way in for all of them, the same words about what is wrong with one, and the same way out.</summary>
/// <param name="goOn">Whether a house with a damaged journal is looked at as far as it is sound.</param>
internal sealed class Look(bool goOn)
{
    private bool _leftOut;

    /// <summary>As the command line asks for.</summary>
    public static Look By(ParseResult parsed) => new(parsed.GetValue(Common.GoOn));

    /// <summary>The history of a house. What is not as it should be is said on standard error; damage ends the verb unless it is to go on.</summary>
    public HouseLog At(string path)
    {
        var (log, remarks, leftOut) = HouseSource.Read(path, goOn);
        foreach (var remark in remarks)
            Common.Say(remark);
        _leftOut |= leftOut;
        return log;
    }

    /// <summary>What the verb ends with: that something was left out goes before what was found in the rest.</summary>
    public int End(int code) => _leftOut && (code is ExitCode.Fine or ExitCode.OpenStops) ? ExitCode.LeftOut : code;
}
