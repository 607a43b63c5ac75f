using TrimOut.Testing;

namespace TrimOut.Papers.Tests.BinderSections;

public class WarrantyTests
{
    [Fact]
    public void WhatWasTypedInStandsInTheBinder()
    {
        var page = Binder.Paper.Page(FinishedHouse.Data());
        Assert.Equal(
            ["Two years", "2026-09-30", "2028-09-29", "Labour and wiring, not wear of fabric."],
            page.TableUnder("The crew's work").Select(r => r[1]));
        Assert.Equal(["Roller", "Five years from delivery", "Motor and tube"], page.TableUnder("The units, by kind").First());
    }

    [Fact]
    public void WhatNobodyTypedIsSaidAndNoPromise() =>
        Assert.Equal("Nothing was noted.", Binder.Paper.Page(FinishedHouse.Data(new TestJob().Scribe.Log)).SaidUnder("Warranty").Last());
}
