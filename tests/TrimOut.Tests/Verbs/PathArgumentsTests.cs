using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using TrimOut.Desks;
using TrimOut.HouseFile.Files;
using TrimOut.Office;
using TrimOut.Tests.Campaign;
using TrimOut.Tests.Terminals;
using Xunit.Abstractions;

namespace TrimOut.Tests.Verbs;

/// <summary>
/// Whatever is no file where a file should be, before every argument and option of every verb that names one: the verbs and their paths are taken from the
/// command table, so that a new one is tried too, or fails here until somebody says what it is.
/// </summary>
[Collection(nameof(OneProcess))]
public sealed class PathArgumentsTests : IDisposable
{
    private static readonly TimeSpan AtOnce = TimeSpan.FromSeconds(1);
    private static readonly string[] PathNames = ["HOUSE", "PATH", "OTHER", "FROM", "DAMAGED", "SCHEDULE", "FILE", "file", "FOLDER", "folder", "house"];
    private static readonly string[] OtherNames = ["PAPER", "COMMAND", "SHELL", "LENGTH", "CONDUCTOR", "CURRENT", "name", "choice", "field=Header", "name=tag",
        "yyyy-mm-dd", "volts", "degrees", "number", "length", "language", "list", "tag", "sheet", "A4|letter", "on|off", "inches|mm", "DEVICE", "NUMBER",
        "crew|reader|office", "crew|reader|office|nothing"];

    private static readonly string[] Sides = [".journal", ".lock", ".in-use", ".new", ".journal.new"];

    private readonly ITestOutputHelper _output;
    private readonly string? _data = Environment.GetEnvironmentVariable("XDG_DATA_HOME");
    private readonly string? _office = Environment.GetEnvironmentVariable(Credentials.FileVariable);
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-").FullName;
    private readonly List<Socket> _sockets = [];

    public PathArgumentsTests(ITestOutputHelper output)
    {
        _output = output;
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", In("data"));
        VerbRun.Run("new", In("good"));
        Directory.CreateDirectory(In("photos"));
        File.WriteAllText(In("history.jsonl"), VerbRun.Run("history", In("good.trimout")).Output);
        File.WriteAllText(In("good.csv"), "tag,width\nW01,30\n");
        File.WriteAllText(In("good.part.txt"), "trimout-part: 1\nkind: hub-type\nname: Hub\ndevices: 9\n");
        File.WriteAllText(In("good.md"), "# {{house}}\n");
        // An office that nobody is at: what is no house is refused before it is asked.
        OwnFile.Write(In("good.credentials"), new Credentials("127.0.0.1", 1, "trimout", "van", "van", "secret", "CERTIFICATE").Write());
        Environment.SetEnvironmentVariable(Credentials.FileVariable, In("good.credentials"));
    }

    public void Dispose()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", _data);
        Environment.SetEnvironmentVariable(Credentials.FileVariable, _office);
        foreach (var socket in _sockets)
            socket.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private string In(string name) => Path.Combine(_folder, name);

    /// <summary>Every verb that does something, with the words that lead to it: <c>check</c>, <c>office send</c>.</summary>
    private static IEnumerable<(string Words, Command Verb)> Verbs() => Below("", CommandLine.Build());

    private static IEnumerable<(string Words, Command Verb)> Below(string words, Command of) => of.Subcommands.SelectMany(verb =>
        verb.Subcommands.Count == 0 ? [($"{words} {verb.Name}".TrimStart(), verb)] : Below($"{words} {verb.Name}".TrimStart(), verb));

    /// <summary>Every verb with every of its paths.</summary>
    private static IEnumerable<(string Words, Command Verb, Symbol Symbol)> Paths()
    {
        foreach (var (words, verb) in Verbs())
        {
            foreach (var symbol in verb.Arguments.Cast<Symbol>().Concat(verb.Options))
            {
                if (NameOf(symbol) is { } name && PathNames.Contains(name))
                    yield return (words, verb, symbol);
            }
        }
    }

    /// <summary>What stands for the value in the help; null where there is no free value.</summary>
    private static string? NameOf(Symbol symbol) => symbol switch
    {
        Argument argument => argument.Name,
        Option { ValueType: var type } option when type == typeof(string) || type == typeof(string[]) => option.HelpName,
        _ => null,
    };

    [Fact]
    public void EveryFreeValueOfEveryVerbIsKnownToBeAPathOrNone()
    {
        foreach (var (words, verb) in Verbs())
        {
            foreach (var symbol in verb.Arguments.Cast<Symbol>().Concat(verb.Options))
                Assert.True(NameOf(symbol) is not { } name || PathNames.Contains(name) || OtherNames.Contains(name), $"{words} {symbol.Name}");
        }
        Assert.True(Paths().Count() > 40, "paths");
        Assert.Contains(Paths(), p => p is { Words: "office send", Symbol.Name: "HOUSE" });
    }

    [LinuxTheory]
    [InlineData("fifo")]
    [InlineData("endless")]
    [InlineData("device")]
    [InlineData("folder")]
    [InlineData("socket")]
    [InlineData("folder with a fifo")]
    public void IsRefusedAtOnceByEveryVerb(string sort)
    {
        var slowest = TimeSpan.Zero;
        var count = 0;
        foreach (var (called, verb, symbol) in Paths())
        {
            // To write into a folder, or to read it, is what a folder is for.
            if (string.Equals(NameOf(symbol), "folder", StringComparison.OrdinalIgnoreCase) && sort.StartsWith("folder", StringComparison.Ordinal))
                continue;
            var path = Place(sort, In($"odd-{++count}.trimout"));
            var words = Words(called, verb, symbol, path);
            // Where nothing is, an office to try things with would be made and started.
            VerbRun.Run(Words(called, verb, symbol, called == "office trial" ? In("good.csv") : In("none")));
            var there = There();
            var clock = Stopwatch.StartNew();
            var ended = VerbRun.Run(words);
            slowest = clock.Elapsed > slowest ? clock.Elapsed : slowest;
            var what = $"{sort}: {string.Join(' ', words)}: {ended.Code.ToString(CultureInfo.InvariantCulture)} {ended.Error} {ended.Crash}";
            Assert.False(ended.Hung, what);
            Assert.True(clock.Elapsed < AtOnce, $"{clock.Elapsed} {what}");
            Assert.True(ended.Crash is null && ended.Code is > 63 and < 78 and not 70, what);
            Assert.True(ended.Error.Length > 0, what);
            Assert.True(ended.Code == ExitCode.NoTerminal || ended.Error.Contains(Path.GetFileName(path), StringComparison.Ordinal)
                || ended.Error.Contains("/dev/", StringComparison.Ordinal), what);
            Assert.Equal(there, There());
        }
        _output.WriteLine($"{count} paths, the slowest took {slowest.TotalMilliseconds:0} ms");
    }

    [LinuxTheory]
    [InlineData("fifo")]
    [InlineData("endless")]
    [InlineData("folder")]
    [InlineData("socket")]
    public void IsRefusedAtOnceByTheScreens(string sort)
    {
        var desk = new Desk("Test crew");
        var path = Place(sort, In("odd.trimout"));
        var clock = Stopwatch.StartNew();
        Assert.False(desk.Open(path).Ok);
        Assert.False(desk.OpenToRead(path).Ok);
        using var house = HouseFile.HouseOnDisk.Open(In("good.trimout"), TimeProvider.System);
        Assert.False(desk.WriteElsewhere(new Core.History.Scribe(house, TimeProvider.System, "Test crew"), path).Ok);
        Assert.True(clock.Elapsed < AtOnce, $"{clock.Elapsed}");
    }

    [LinuxTheory]
    [InlineData("fifo")]
    [InlineData("endless")]
    [InlineData("folder")]
    [InlineData("socket")]
    public void BesideAHouseHoldsNobodyUp(string sort)
    {
        foreach (var side in Sides)
        {
            var house = In($"h{side}.trimout");
            File.Copy(In("good.trimout"), house);
            Place(sort, house + side);
            foreach (var verb in new[] { "check", "set", "backup", "papers" })
                EndsAtOnce($"{sort} at {side}", verb, house);
        }
    }

    [LinuxTheory]
    [InlineData("fifo")]
    [InlineData("endless")]
    [InlineData("folder")]
    [InlineData("socket")]
    public void InTheUsersOwnFolderHoldsNobodyUp(string sort)
    {
        foreach (var own in new[] { "settings.json", "papers-written", "backups" })
        {
            if (Directory.Exists(In("data")))
                Directory.Delete(In("data"), recursive: true);
            Directory.CreateDirectory(In("data/trimout"));
            Place(sort, In(Path.Combine("data", "trimout", own)));
            foreach (var verb in new[] { "check", "set", "backup", "backups", "binder" })
                EndsAtOnce($"{sort} at {own}", verb, In("good.trimout"));
        }
    }

    private void EndsAtOnce(string what, string verb, string house)
    {
        string[] words = verb is "papers" or "binder" ? [verb, house, "--out", In("papers")] : [verb, house];
        var clock = Stopwatch.StartNew();
        var ended = VerbRun.Run(words);
        Assert.False(ended.Hung, $"{what}, {verb}");
        Assert.True(clock.Elapsed < (verb == "papers" ? 20 : 2) * AtOnce, $"{what}, {verb}: {clock.Elapsed}");
        Assert.True(ended.Crash is null && ended.Code is not 70, $"{what}, {verb}: {ended.Code} {ended.Error} {ended.Crash}");
        Assert.True(ended.Code < 64 || ended.Error.Length > 0, $"{what}, {verb}");
    }

    private string[] Words(string called, Command verb, Symbol odd, string path)
    {
        List<string> words = [.. called.Split(' ')];
        foreach (var argument in verb.Arguments)
            words.Add(argument == odd ? path : Good(called, argument.Name));
        if (odd is Option option)
            words.AddRange([option.Name, path]);
        return [.. words];
    }

    private string Good(string called, string name) => name switch
    {
        "HOUSE" or "OTHER" or "DAMAGED" => In("good.trimout"),
        "PATH" => In("made.trimout"),
        "FROM" => In("history.jsonl"),
        "SCHEDULE" => In("good.csv"),
        "FILE" when called == "office enroll" => In("made.credentials"),
        "FILE" => In("good.part.txt"),
        "FOLDER" => In("photos"),
        "PAPER" => called == "firm-paper" ? "week-plan" : "labels",
        "DEVICE" => "van",
        "NUMBER" => "1",
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "what is good for that?"),
    };

    /// <summary>Names beside the houses, apart from what the verbs may make when all is well with what they are given.</summary>
    private string[] There()
    {
        File.Delete(In("made.trimout"));
        return [.. Directory.GetFileSystemEntries(_folder).Where(f => Path.GetFileName(f) is not ("data" or "made.trimout")).Order(StringComparer.Ordinal)];
    }

    private string Place(string sort, string path)
    {
        switch (sort)
        {
            case "fifo":
                Process.Start("mkfifo", [path]).WaitForExit();
                break;
            case "endless":
                File.CreateSymbolicLink(path, "/dev/zero");
                break;
            case "device":
                File.CreateSymbolicLink(path, "/dev/null");
                break;
            case "socket":
                var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
                socket.Bind(new UnixDomainSocketEndPoint(path));
                _sockets.Add(socket);
                break;
            default:
                Directory.CreateDirectory(path);
                if (sort != "folder")
                    Process.Start("mkfifo", [Path.Combine(path, "history.jsonl")]).WaitForExit();
                break;
        }
        return path;
    }
}
