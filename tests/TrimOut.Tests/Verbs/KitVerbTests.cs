namespace TrimOut.Tests.Verbs;

public sealed class KitVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-kit-").FullName;

    private static readonly string Orchard = Path.Combine(TrimOut.Testing.Repository.Root, "sample-jobs", "orchard-cottage");

    public void Dispose()
    {
        _run.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void ANewHouseSaysHowManyBlanksItsKitHas()
    {
        var ended = _run.Run("new", Path.Combine(_folder, "blank"));
        Assert.Equal(0, ended.Code);
        Assert.Matches("Its kit has [0-9]+ blanks", ended.Error);
    }

    [Fact]
    public void AKitGoesFromOneHouseToTheNext()
    {
        var kit = Path.Combine(_folder, "kit");
        Assert.Equal(0, _run.Run("kit-out", Orchard, "--kit", kit).Code);
        var panel = Directory.GetFiles(kit, "panel-type-*").Single();
        Assert.Contains("held-by: Lea", File.ReadAllText(panel), StringComparison.Ordinal);

        var next = Path.Combine(_folder, "next.trimout");
        Assert.Equal(0, _run.Run("new", next, "--kit", kit).Code);
        Assert.Contains("panel-type\tPanel, 14 outputs\t6\t0\t0\t0\n", _run.Run("kit", next).Output, StringComparison.Ordinal);

        File.WriteAllText(panel, File.ReadAllText(panel).Replace("outputs: 14", "outputs: 9", StringComparison.Ordinal));
        var tried = _run.Run("kit-in", next, panel, "--try");
        Assert.Equal("Panel, 14 outputs\tOutputs\t14\t9\n", tried.Output);
        Assert.Contains("this was a try", tried.Error, StringComparison.Ordinal);
        Assert.Contains("Saved: ", _run.Run("kit-in", next, panel).Error, StringComparison.Ordinal);
        Assert.Empty(_run.Run("kit-in", next, panel).Output);
    }

    [Fact]
    public void AnotherTextOfAPartIsKeptAsItWas()
    {
        var kit = Path.Combine(_folder, "kit");
        _run.Run("kit-out", Orchard, "--kit", kit, "--part", "Hub");
        var file = Directory.GetFiles(kit).Single();
        File.AppendAllText(file, "# a remark of my own\n");
        _run.Run("kit-out", Orchard, "--kit", kit, "--part", "Hub");
        Assert.Contains("a remark of my own", File.ReadAllText(file + ".older-1"), StringComparison.Ordinal);
    }
}
