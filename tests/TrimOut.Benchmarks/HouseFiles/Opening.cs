using System.Diagnostics;
using System.Globalization;
using LiteDB;
using TrimOut.Benchmarks.Terminals;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Kept;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.HouseFiles;

/// <summary>
/// Opening and folding a house of 500 windows by the number of its changes, against LiteDB reading the same rows and nothing more; the start
/// of the program with it; and one line by <c>trimout set</c> in a house of ten times the windows, against the same in one of 500: the two take turns,
/// so that a slow moment of the machine hits both.
/// </summary>
internal static class Opening
{
    private const int Windows = 500;
    private const int Times = 9;
    private const int Starts = 5;
    private const int SetRounds = 9;
    private const int ChangesOfAWindow = 38;

    public static void Measure(string folder)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "trimout");
        var bare = FirstPaint(folder, $"\"{Path.Combine(AppContext.BaseDirectory, "TrimOut.Benchmarks")}\" bare-line", "one line");
        Set(folder, program);
        var counts = new[] { 5_000, 20_000, 50_000, 100_000 };
        var opened = counts.Select(c => Measure(folder, c)).ToList();
        foreach (var (count, (path, ours, engine)) in counts.Zip(opened))
        {
            var first = FirstPaint(folder, $"\"{program}\" open --read-only \"{path}\"", "W0001");
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{count,7} changes, {new FileInfo(path).Length / 1e6,5:0.0} MB: opened and folded in {ours,5:0} ms, " +
                    $"{ours / engine:0.00} of what LiteDB takes to read the rows ({engine:0} ms), " +
                    $"a change {ours / count / (opened[1].Ours / counts[1]):0.00} of one among 20,000"));
            Console.WriteLine(
                string.Create(CultureInfo.InvariantCulture,
                    $"        from nothing to the first paint {first:0} ms, {first / bare:0.0} of a bare program's first line ({bare:0} ms)"));
        }
    }

    /// <summary>
    /// One line by <c>trimout set</c>, from the start of the program to its end. Each house is left as the screens leave it, so the first line has to make
    /// a backup and to write the large file anew; the median is of those that come after.
    /// </summary>
    private static void Set(string folder, string program)
    {
        var houses = new[] { Windows, 10 * Windows };
        var paths = houses.Select(w => Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"set-{w}.trimout"))).ToList();
        foreach (var (windows, path) in houses.Zip(paths))
        {
            File.Delete(path);
            HouseOnDisk.Create(path, TimeProvider.System, History(windows, windows * ChangesOfAWindow)).Dispose();
            var kept = Directory.CreateDirectory(Path.Combine(folder, "data", "trimout", "kept")).FullName;
            using var house = HouseOnDisk.Open(path, TimeProvider.System, BriefWork.Not(kept));
            var scribe = new Scribe(house, TimeProvider.System, "Benchmark");
            house.KeepAtClosing(() => scribe.Log);
        }
        var first = paths.ConvertAll(p => Line(folder, program, p, 0));
        var times = paths.ConvertAll(_ => new List<double>());
        for (var round = 1; round <= SetRounds; round++)
        {
            for (var house = 0; house < paths.Count; house++)
                times[house].Add(Line(folder, program, paths[house], round));
        }
        var median = times.ConvertAll(t => t.Order().ElementAt(SetRounds / 2));
        for (var house = 0; house < paths.Count; house++)
        {
            var size = new FileInfo(paths[house]).Length / 1e6;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"one line by set, {houses[house],4} windows, {houses[house] * ChangesOfAWindow,6} changes, {size:0.0} MB: the first " +
                    $"{first[house]:0} ms, then {median[house]:0} ms ({times[house].Min():0} to {times[house].Max():0})"));
        }
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"the large house: {median[1] / median[0]:0.00} of the small one"));
    }

    private static double Line(string folder, string program, string path, int round)
    {
        var start = new ProcessStartInfo(program, ["set", path]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        start.Environment["XDG_DATA_HOME"] = Path.Combine(folder, "data");
        var began = Stopwatch.GetTimestamp();
        using var run = Process.Start(start)!;
        run.StandardInput.Write($"W0001\tnote\tround {round}\n");
        run.StandardInput.Close();
        if (run.StandardOutput.ReadToEnd().Trim() != "1")
            throw new InvalidOperationException("The line was not saved.");
        run.WaitForExit();
        return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
    }

    private static (string Path, double Ours, double Engine) Measure(string folder, int count)
    {
        var path = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"opening-{count}.trimout"));
        File.Delete(path);
        HouseOnDisk.Create(path, TimeProvider.System, History(Windows, count)).Dispose();
        var (ours, engine) = (new List<double>(), new List<double>());
        for (var time = 0; time < Times; time++)
        {
            GC.Collect();
            var start = Stopwatch.GetTimestamp();
            using (var house = HouseOnDisk.Open(path, TimeProvider.System))
            {
                if (new Scribe(house, TimeProvider.System, "Benchmark").House.Windows.Length != Windows)
                    throw new InvalidOperationException("The house is not as it was made.");
            }
            ours.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            GC.Collect();
            start = Stopwatch.GetTimestamp();
            using (var database = new LiteDatabase($"Filename={path};ReadOnly=true"))
            {
                if (database.GetCollection("changes").FindAll().Count() != count)
                    throw new InvalidOperationException("The rows are not as they were written.");
            }
            engine.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }
        return (path, ours.Order().ElementAt(Times / 2), engine.Order().ElementAt(Times / 2));
    }

    /// <summary>The median of several starts of a program in a terminal.</summary>
    private static double FirstPaint(string folder, string command, string text)
    {
        var times = new List<double>();
        for (var time = 0; time < Starts; time++)
        {
            using var run = new TerminalRun(folder, command);
            times.Add(run.FirstPaint(text).TotalMilliseconds);
        }
        return times.Order().ElementAt(Starts / 2);
    }

    private static List<Change> History(int many, int count)
    {
        var job = new TestJob();
        for (var window = 1; window <= many; window++)
            job.Do(AddItems.Window(job.House, string.Create(CultureInfo.InvariantCulture, $"W{window:0000}"), null));
        var changes = job.Scribe.Log.Changes.ToList();
        var windows = job.House.Windows;
        var last = new Dictionary<(string, string), ChangeId>();
        Fact[] facts = [WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.HeightLeft, WindowFacts.HeightMiddle,
            WindowFacts.HeightRight, WindowFacts.Depth, WindowFacts.RoughWidth, WindowFacts.RoughHeight];
        for (var number = changes.Count + 1; number <= count; number++)
        {
            var window = windows[number * 7 % many];
            var fact = facts[number * 31 % facts.Length];
            var id = new ChangeId("laptop", number);
            var over = last.TryGetValue((window.Id, fact.Name), out var before) ? new[] { before } : [];
            last[(window.Id, fact.Name)] = id;
            var value = string.Create(CultureInfo.InvariantCulture, $"{900 + number % 400} mm");
            changes.Add(
                new Change(id, number, new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.FromHours(-5)).AddMinutes(number), "Test crew",
                    $"{window.Tag}: {fact.Label}: {value}", [new Edit.Put(window.Id, fact.Name, value, [.. over])]));
        }
        return changes;
    }
}
