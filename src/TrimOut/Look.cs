using System.CommandLine;
using TrimOut.Core.History;
using TrimOut.Verbs;

namespace TrimOut;

/// <summary>How a verb looks at houses: the same way in for all of them, the same words about what is wrong with one, and the same way out.</summary>
/// <param name="goOn">Whether a house with a damaged journal is looked at as far as it is sound.</param>
internal sealed class Look(bool goOn)
{
    /// <summary>How many saves of the houses that were looked at are in doubt at the least; 0 where nobody knows how many, null where none is.</summary>
    public long? InDoubt { get; private set; }

    /// <summary>As the command line asks for.</summary>
    public static Look By(ParseResult parsed) => new(parsed.GetValue(Common.GoOn));

    /// <summary>The history of a house. What is not as it should be is said on standard error; damage ends the verb unless it is to go on.</summary>
    public HouseLog At(string path)
    {
        return Told(HouseSource.Read(path, goOn));
    }

    private HouseLog Told((HouseLog Log, IReadOnlyList<string> Remarks, long? InDoubt) read)
    {
        var (log, remarks, inDoubt) = read;
        foreach (var remark in remarks)
            Common.Say(remark);
        InDoubt = inDoubt is null ? InDoubt : Math.Max(InDoubt ?? 0, inDoubt.Value);
        return log;
    }

    /// <summary>The history that a text holds; <c>-</c> is standard input.</summary>
    public HouseLog AtText(string path) => Told(HouseSource.ReadAsText(path));

    /// <summary>What the verb ends with: that something was left out goes before what was found in the rest.</summary>
    public int End(int code) => InDoubt is not null && (code is ExitCode.Fine or ExitCode.OpenStops) ? ExitCode.LeftOut : code;
}
