using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Runs;

/// <summary>One house from the sheets to the handover, with all that TrimOut said on the way.</summary>
public sealed class Walk
{
    private readonly Dictionary<Stage, IReadOnlyList<Said>> _said = [];

    private Walk(RealHouse truth, double meterDigit) => Installer = new Installer(truth, meterDigit);

    /// <summary>Who walked.</summary>
    public Installer Installer { get; }

    /// <summary>What is written.</summary>
    public Book Book => Installer.Book;

    /// <summary>Walks a house to its end, or to a stage.</summary>
    public static Walk Through(RealHouse truth, Stage until = Stage.Service, double meterDigit = 0.01)
    {
        var walk = new Walk(truth, meterDigit);
        foreach (var stage in Stages.All.Where(s => s <= until))
        {
            walk.Installer.Write(stage);
            walk._said[stage] = Said.Of(walk.Book.House);
        }
        return walk;
    }

    /// <summary>What is said at the end of a stage.</summary>
    public IReadOnlyList<Said> SaidAt(Stage stage) => _said.GetValueOrDefault(stage) ?? [];

    /// <summary>What was not said before, with the stage in which it is said first.</summary>
    public IEnumerable<(Stage Stage, Said Said)> NewlySaid()
    {
        var before = new HashSet<(string Check, string Subject)>();
        foreach (var stage in Stages.All)
        {
            foreach (var said in SaidAt(stage).Where(s => before.Add((s.Check, s.Subject))))
                yield return (stage, said);
        }
    }
}
