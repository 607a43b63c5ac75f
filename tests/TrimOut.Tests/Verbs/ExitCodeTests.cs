using TrimOut.Core.History;
using TrimOut.Verbs;

namespace TrimOut.Tests.Verbs;

public sealed class ExitCodeTests : IDisposable
{
    private readonly StringWriter _said = new();

    public void Dispose() => _said.Dispose();

    [Fact]
    public void AFaultOfTheProgramEndsWithSeventy()
    {
        Assert.Equal(70, Program.Guarded(() => throw new InvalidOperationException("nobody thought of this"), _said));
        Assert.Contains("a fault of its own", _said.ToString(), StringComparison.Ordinal);
        Assert.Contains(nameof(AFaultOfTheProgramEndsWithSeventy), _said.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void AFaultThatStopsTheScreensEndsWithSeventyToo()
    {
        Assert.Equal(70, Program.Guarded(() => OpenVerb.Ended("TrimOut stopped by a fault of its own.", [], []), _said));
        Assert.Equal(0, Program.Guarded(() => OpenVerb.Ended(null, [], []), _said));
        Assert.Equal(74, Program.Guarded(() => OpenVerb.Ended(null, [], ["elm.trimout: gone."]), _said));
        Assert.Equal("trimout: TrimOut stopped by a fault of its own.\n", _said.ToString().ReplaceLineEndings("\n"));
    }

    [Fact]
    public void WhatTheDiskOrTheUserDidWrongKeepsItsOwnCode()
    {
        Assert.Equal(74, Program.Guarded(() => throw new HouseStoreException("the disk is gone"), _said));
        Assert.Equal(69, Program.Guarded(() => throw new VerbException(ExitCode.NoTerminal, "no terminal"), _said));
        Assert.Equal("trimout: the disk is gone\ntrimout: no terminal\n", _said.ToString().ReplaceLineEndings("\n"));
    }
}
