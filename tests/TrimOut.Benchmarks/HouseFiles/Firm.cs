using System.Diagnostics;
using System.Globalization;
using TrimOut.HouseFile;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.HouseFiles;

/// <summary>
/// All houses of a folder by <c>trimout firm</c>, from the start of the program to its end: the first time, when each is opened; by their kept summaries; and
/// when one of them changed. The houses are those of the sample jobs in turn, each a file of its own.
/// </summary>
internal static class Firm
{
    private const int Houses = 500;
    private const int Times = 9;

    public static void Measure(string folder)
    {
        var houses = Directory.CreateDirectory(Path.Combine(folder, "firm")).FullName;
        foreach (var old in Directory.GetFiles(houses))
            File.Delete(old);
        var samples = SampleHouse.Names.Select(SampleHouse.Changes).ToList();
        for (var at = 0; at < Houses; at++)
            HouseOnDisk.Create(HouseAt(houses, at), TimeProvider.System, samples[at % samples.Count]).Dispose();
        var bare = Median(() => Run(folder, "--version").Time);
        var first = Run(folder, "firm", houses);
        Hold(first.Rows);
        var kept = Median(() =>
        {
            var (time, rows, said) = Run(folder, "firm", houses);
            Hold(rows);
            return said == 0 ? time : throw new InvalidOperationException("A house was opened again that did not change.");
        });
        var changed = Median(() =>
        {
            File.SetLastWriteTimeUtc(HouseAt(houses, 7), DateTime.UtcNow);
            var (time, rows, said) = Run(folder, "firm", houses);
            Hold(rows);
            return said == 1 ? time : throw new InvalidOperationException("A house that changed was not opened again.");
        });
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{Houses} houses, from the start of the program to its end: each opened for the first time {first.Time / 1000:0.0} s; by their summaries "
                + $"{kept:0} ms; one of them changed {changed:0} ms; the program that only says its version {bare:0} ms"));
    }

    private static string HouseAt(string folder, int at) => Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"house-{at:000}.trimout"));

    private static void Hold(int rows)
    {
        if (rows != Houses)
            throw new InvalidOperationException($"{rows} houses were listed.");
    }

    private static double Median(Func<double> measure) => Enumerable.Range(0, Times).Select(_ => measure()).Order().ElementAt(Times / 2);

    private static (double Time, int Rows, int Said) Run(string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "trimout"), arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["XDG_DATA_HOME"] = Path.Combine(folder, "data");
        var began = Stopwatch.GetTimestamp();
        using var run = Process.Start(start)!;
        var said = run.StandardError.ReadToEndAsync();
        var rows = run.StandardOutput.ReadToEnd().Split('\n').Count(l => l.StartsWith("house\t", StringComparison.Ordinal));
        run.WaitForExit();
        return (Stopwatch.GetElapsedTime(began).TotalMilliseconds, rows, said.Result.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }
}
