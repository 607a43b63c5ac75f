using System.Globalization;
using TrimOut.HouseFile;
using Xunit.Abstractions;

namespace TrimOut.Tests;

/// <summary>The real program is killed at random moments while it saves. TRIMOUT_KILLS sets how often (6 when unset).</summary>
public sealed class KillTests(ITestOutputHelper output) : IDisposable
{
    private static readonly int Kills = int.TryParse(Environment.GetEnvironmentVariable("TRIMOUT_KILLS"), out var kills) ? kills : 6;

    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void AKilledProgramLosesNothingThatItCalledSaved()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,width\nW01,30\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
        var random = new Random(17);
        var saved = new List<string>();
        for (var round = 0; round < Kills; round++)
        {
            saved.AddRange(SaveAndKill(round, random));
            using var house = HouseOnDisk.OpenToRead(_run.In("elm.trimout"), TimeProvider.System);
            var there = house.Opened.SelectMany(c => c.Edits).OfType<Core.History.Edit.Put>().Where(p => p.Field == "note").Select(p => p.Value!).ToHashSet();
            Assert.All(saved, note => Assert.Contains(note, there));
            Assert.All(there, note => Assert.EndsWith(" end", note));
        }
        output.WriteLine($"{Kills} kills, {saved.Count} saves, 0 lost");
        Assert.NotEmpty(saved);
    }

    /// <summary>Lets the program save note after note, kills it, and gives back those that it called saved.</summary>
    private List<string> SaveAndKill(int round, Random random)
    {
        using var process = _run.Start("set", "elm.trimout");
        var notes = Enumerable.Range(1, 5000).Select(n => string.Create(CultureInfo.InvariantCulture, $"round {round} note {n} {new string('x', n % 200)} end"))
            .ToList();
        var feeding = Task.Run(() =>
        {
            try
            {
                foreach (var note in notes)
                    process.StandardInput.WriteLine($"W01\tnote\t{note}");
            }
            catch (IOException)
            {
                // The pipe breaks when the program is killed.
            }
        });
        var saved = new List<string>();
        var until = random.Next(1, 120);
        while (process.StandardOutput.ReadLine() is { } number)
        {
            saved.Add(notes[int.Parse(number, CultureInfo.InvariantCulture) - 1]);
            if (saved.Count == until)
            {
                Thread.Sleep(random.Next(0, 20));
                process.Kill();
            }
        }
        process.WaitForExit();
        feeding.Wait();
        return saved;
    }
}
