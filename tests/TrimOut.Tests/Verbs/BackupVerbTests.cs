namespace TrimOut.Tests.Verbs;

public sealed class BackupVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public BackupVerbTests()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,width\nW01,30\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
    }

    public void Dispose() => _run.Dispose();

    private string History(string house = "elm.trimout") => _run.Run("history", house).Output;

    [Fact]
    public void OpeningAHouseToWorkOnItMakesABackup()
    {
        var backup = _run.Run("backups", "elm.trimout").Output.Split('\t');
        Assert.StartsWith(_run.In("data"), backup[0]);
        Assert.Equal(("1", "0"), (backup[2], backup[3].Trim()));
        Assert.Equal(1, History(backup[0]).Split('\n').Length - 1);
    }

    [Fact]
    public void ABackupIsPutBackAfterALookAtTheDifference()
    {
        var before = History();
        var backup = _run.Run("backups", "elm.trimout").Output.Split('\t')[0];
        var look = _run.Run("restore", "elm.trimout", backup);
        Assert.Equal(73, look.Code);
        Assert.Contains("Import s.csv: 1 window", look.Output);
        Assert.Contains("W01: Rough width: 30\" here, - there", look.Output);
        Assert.Equal(before, History());
        Assert.Equal(0, _run.Run("restore", "elm.trimout", backup, "--replace").Code);
        Assert.Equal(1, History().Split('\n').Length - 1);
        Assert.Contains(_run.Run("backups", "elm.trimout").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries),
            line => History(line.Split('\t')[0]) == before);
    }

    [Fact]
    public void AnotherPlaceForBackupsIsRemembered()
    {
        Assert.Equal(0, _run.Run("backup", "--keep-in", "elsewhere").Code);
        Assert.StartsWith(_run.In("elsewhere"), _run.Run("backup", "elm.trimout").Output);
        Assert.Equal(0, _run.Run("backup", "elm.trimout", "--to", "stick").Code);
        Assert.Equal(History(), History("stick.trimout"));
        Assert.Equal(0, _run.Run("compare", "elm.trimout", "stick.trimout").Code);
        Assert.Equal(64, _run.Run("backup").Code);
    }

    [Fact]
    public void WhatIsSoundInADamagedFileIsRescuedAndTheFileLeftAlone()
    {
        var bytes = File.ReadAllBytes(_run.In("elm.trimout"));
        bytes.AsSpan(bytes.AsSpan().IndexOf("Import s.csv"u8), 3).Fill((byte)'x');
        File.WriteAllBytes(_run.In("elm.trimout"), bytes);
        var refused = _run.Run("check", "elm.trimout");
        Assert.Equal(65, refused.Code);
        Assert.Contains("trimout rescue", refused.Error);
        var rescue = _run.Run("rescue", "elm.trimout", "saved");
        Assert.Equal(2, rescue.Code);
        Assert.Contains("Change 2, after \"New house elm\"", rescue.Error);
        Assert.Equal(1, History("saved.trimout").Split('\n').Length - 1);
        Assert.Equal(bytes, File.ReadAllBytes(_run.In("elm.trimout")));
    }
}
