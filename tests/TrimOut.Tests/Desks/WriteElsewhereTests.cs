using TrimOut.Core.History;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.Tests.Campaign;
using TrimOut.Tests.Verbs;

namespace TrimOut.Tests.Desks;

/// <summary>F2 on the screens: where a house that can't be saved is written to.</summary>
[Collection(nameof(OneProcess))]
public sealed class WriteElsewhereTests : IDisposable
{
    private readonly string? _data = Environment.GetEnvironmentVariable("XDG_DATA_HOME");
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-").FullName;

    public WriteElsewhereTests()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", Path.Combine(_folder, "data"));
        Assert.Equal(0, VerbRun.Run("new", Path.Combine(_folder, "elm"), "--name", "Elm Street").Code);
    }

    public void Dispose()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", _data);
        Directory.Delete(_folder, recursive: true);
    }

    private (bool Ok, string? Said) Write(string where)
    {
        using var house = HouseOnDisk.OpenToRead(Path.Combine(_folder, "elm.trimout"), TimeProvider.System);
        var written = new Desk("Test crew").WriteElsewhere(new Scribe(house, TimeProvider.System, "Test crew"), where);
        (written.Ok ? written.Value.Store as IDisposable : null)?.Dispose();
        return (written.Ok, written.Ok ? written.Value.Store.Where : written.Reason);
    }

    [Theory]
    [InlineData("tray")]
    [InlineData("tray/")]
    public void AFolderTakesItUnderTheHousesName(string folder)
    {
        Directory.CreateDirectory(Path.Combine(_folder, "tray"));
        Assert.Equal((true, Path.Combine(_folder, "tray", "Elm-Street.trimout")), Write(Path.Combine(_folder, folder)));
    }

    [Theory]
    [InlineData("", "No file is named")]
    [InlineData("-", "standard output")]
    [InlineData("gone/", "There is no folder")]
    [InlineData(".trimout", "only the ending")]
    [InlineData("nul", "Windows keeps NUL for a device")]
    [InlineData("elm?.trimout", "Windows takes no ? in a file's name")]
    public void WhatIsNoFilesNameIsRefused(string where, string why)
    {
        var there = Directory.GetFileSystemEntries(_folder).Length;
        var (ok, said) = Write(where is "" or "-" ? where : Path.Combine(_folder, where));
        Assert.False(ok);
        Assert.Contains(why, said);
        Assert.Equal(there, Directory.GetFileSystemEntries(_folder).Length);
    }

    [Fact]
    public void AHouseThatIsCalledAsADeviceGetsAFileWithANameNearIt()
    {
        var begun = new Desk("Test crew").Create("Aux", Core.Units.DisplayUnits.Inches, []).Value;
        (begun.Store as IDisposable)?.Dispose();
        Assert.Equal("house-Aux.trimout", Path.GetFileName(begun.Store.Where));
    }
}
