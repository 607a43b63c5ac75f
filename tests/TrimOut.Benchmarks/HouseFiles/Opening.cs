using System.Diagnostics;
using System.Globalization;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.HouseFile;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.HouseFiles;

/// <summary>Opening and folding a house of 500 windows, by the number of its changes.</summary>
internal static class Opening
{
    private const int Windows = 500;
    private const int Times = 9;

    public static void Measure(string folder)
    {
        foreach (var count in new[] { 5_000, 20_000, 50_000, 100_000 })
        {
            var path = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"opening-{count}.trimout"));
            HouseOnDisk.Create(path, TimeProvider.System, History(count)).Dispose();
            var (times, worked) = (new List<double>(), new List<double>());
            for (var time = 0; time < Times; time++)
            {
                GC.Collect();
                var (start, work) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
                using var house = HouseOnDisk.Open(path, TimeProvider.System);
                var scribe = new Scribe(house, TimeProvider.System, "Benchmark");
                if (scribe.House.Windows.Length != Windows)
                    throw new InvalidOperationException("The house is not as it was made.");
                times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
                worked.Add((Environment.CpuUsage.TotalTime - work).TotalMilliseconds);
            }
            var first = times[0];
            times.Sort();
            worked.Sort();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{count,7} changes, {new FileInfo(path).Length / 1e6,5:0.0} MB: first {first,6:0} ms, median {times[Times / 2],6:0} ms, fastest {times[0],6:0} ms; of the processor {worked[Times / 2],6:0} ms, {worked[Times / 2] * 1000 / count:0.0} us a change"));
        }
    }

    private static List<Change> History(int count)
    {
        var job = new TestJob();
        for (var window = 1; window <= Windows; window++)
            job.Do(AddItems.Window(job.House, string.Create(CultureInfo.InvariantCulture, $"W{window:000}"), null));
        var changes = job.Scribe.Log.Changes.ToList();
        var windows = job.House.Windows;
        var last = new Dictionary<(string, string), ChangeId>();
        Fact[] facts = [WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight, WindowFacts.Depth, WindowFacts.RoughWidth, WindowFacts.RoughHeight];
        for (var number = changes.Count + 1; number <= count; number++)
        {
            var window = windows[number * 7 % Windows];
            var fact = facts[number * 31 % facts.Length];
            var id = new ChangeId("laptop", number);
            var over = last.TryGetValue((window.Id, fact.Name), out var before) ? new[] { before } : [];
            last[(window.Id, fact.Name)] = id;
            var value = string.Create(CultureInfo.InvariantCulture, $"{900 + number % 400} mm");
            changes.Add(new Change(id, number, new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.FromHours(-5)).AddMinutes(number), "Test crew", $"{window.Tag}: {fact.Label}: {value}", [new Edit.Put(window.Id, fact.Name, value, [.. over])]));
        }
        return changes;
    }
}
