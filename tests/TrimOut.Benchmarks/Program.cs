using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Engines;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using TrimOut.Benchmarks.Checks;
using TrimOut.Benchmarks.HouseFiles;
using TrimOut.Benchmarks.Office;
using TrimOut.Benchmarks.Papers;
using TrimOut.Benchmarks.Plans;
using TrimOut.Benchmarks.Terminals;

// Saves and openings are about a disk, screens about a terminal: they take turns with what they are held against, in the folder that is named.
if (args is ["saves" or "opening" or "screens" or "firm", ..])
{
    var folder = args.Length > 1 ? Directory.CreateDirectory(args[1]).FullName : Directory.CreateTempSubdirectory("trimout-").FullName;
    (args[0] switch { "saves" => (Action<string>)Saves.Measure, "opening" => Opening.Measure, "firm" => Firm.Measure, _ => Screens.Measure })(folder);
    return;
}

// Papers take turns with the converter that they are made with.
if (args is ["papers", .. var sizes])
{
    PapersBesideMarkdig.Measure(sizes.Length == 0 ? [50, 500, 5000] : [.. sizes.Select(s => int.Parse(s, System.Globalization.CultureInfo.InvariantCulture))]);
    return;
}

// What the screens are held against, each in a terminal of its own.
if (args is ["table-peer", var rows])
{
    TablePeer.Run(int.Parse(rows, System.Globalization.CultureInfo.InvariantCulture));
    return;
}
if (args is ["bare-line"])
{
    Console.WriteLine("one line");
    return;
}

// The office copy takes turns with the bare server.
if (args is ["office", .. var houses])
{
    OfficeCopy.Measure(houses is [var many] ? int.Parse(many, System.Globalization.CultureInfo.InvariantCulture) : 500);
    return;
}

// Checks are over in milliseconds and run after every edit: they are measured when the code is warm.
if (args is ["checks"])
{
    ChecksBySize.Measure();
    return;
}

// "plans" runs what lies in the namespace Plans, and so on; more words go to BenchmarkDotNet as they are.
var topic = args.Length > 0 && !args[0].StartsWith('-') ? args[0] : null;
string[] filter = topic is null ? [] : ["--filter", $"TrimOut.Benchmarks.{char.ToUpperInvariant(topic[0])}{topic[1..]}.*"];
var job = Job.Default.WithStrategy(RunStrategy.Monitoring).WithWarmupCount(2).WithIterationCount(3).WithId("Short");
var config = ManualConfig.Create(DefaultConfig.Instance).AddJob(job.WithToolchain(InProcessEmitToolchain.Instance));
BenchmarkSwitcher.FromAssembly(typeof(EqualTime).Assembly).Run([.. filter, .. args.Skip(topic is null ? 0 : 1)], config);
if (topic == "plans")
    EqualTime.Print(Console.Out);
