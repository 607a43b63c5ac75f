using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Desks;
using TrimOut.Screens.Schedules;
using TrimOut.Testing;

namespace TrimOut.Tests.Desks;

/// <summary>Columns that somebody chose for an office's schedule are taken for the next one, and it is said where they no longer fit.</summary>
public sealed class ScheduleDeskTests : IDisposable
{
    private const string Headers = "Kode,Rum,Bredd,Anm";

    private static readonly ImmutableDictionary<string, string> None = ImmutableDictionary<string, string>.Empty;

    private static readonly ImmutableDictionary<string, string> Chosen = None.Add("tag", "Kode").Add("room", "Rum").Add("width", "Bredd=cm").Add("note", "Anm");

    private readonly TestJob _job = new();
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("trimout-schedule");
    private readonly Dictionary<string, IReadOnlyDictionary<string, string>> _kept = [];

    public void Dispose() => _folder.Delete(recursive: true);

    private Result<(ScheduleRead Read, string Headers)> Read(string csv, IReadOnlyDictionary<string, string> columns)
    {
        var path = Path.Combine(_folder.FullName, "s.csv");
        File.WriteAllText(path, csv);
        return ScheduleDesk.Read(_job.Scribe.Log, path, columns, _kept);
    }

    private static string From(ScheduleRead read, string field) => read.Columns.Single(c => c.Field == field).From;

    [Fact]
    public void AFileOfWhichNothingWasChosenYetIsReadByItsHeaders() =>
        Assert.Equal("from \"Width (mm)\", bare numbers in mm", From(Read("Mark,Width (mm)\nW01,900\n", None).Value.Read, "width"));

    [Fact]
    public void WhatWasChosenIsTakenForTheSameHeadersAgain()
    {
        var first = Read($"{Headers}\nW01,Hall,90,\n", Chosen).Value;
        _kept[first.Headers] = Chosen;
        var next = Read($"{Headers}\nW02,Hall,90,\n", None).Value.Read;
        Assert.Equal("from \"Bredd\", bare numbers in cm", From(next, "width"));
        Assert.Contains("900 mm", Assert.Single(next.Windows).Text, StringComparison.Ordinal);
        Assert.DoesNotContain(next.Remarks, r => r.Head == "as before");
    }

    [Fact]
    public void OfAScheduleWithNearlyTheSameHeadersItIsSaidAndSoIsWhatItHasNot()
    {
        _kept[Read($"{Headers}\nW01,Hall,90,\n", Chosen).Value.Headers] = Chosen;
        var next = Read("Kode,Rum,Bredd,Typ\nW02,Hall,90,\n", None).Value.Read;
        Assert.Equal("from \"Bredd\", bare numbers in cm", From(next, "width"));
        Assert.Equal("from no column", From(next, "note"));
        Assert.Contains(next.Remarks, r => r.Head == "as before");
        Assert.Contains(next.Remarks, r => r.Text.Contains("No column is headed \"Anm\" (asked for as note)", StringComparison.Ordinal));
        // Half of it is another office's.
        Assert.DoesNotContain(Read("Mark,Rum,Width,Anm\nW02,Hall,30,\n", None).Value.Read.Remarks, r => r.Head == "as before");
    }

    [Fact]
    public void AShortNameThatIsTypedIsAskedAboutAndChangesNothing() =>
        Assert.StartsWith("\"wid\" (asked for as width) fits 2 columns: Width (mm), RO width.",
            Read("Mark,Width (mm),RO width\nW01,900,36\n", None.Add("width", "wid")).Reason, StringComparison.Ordinal);
}
