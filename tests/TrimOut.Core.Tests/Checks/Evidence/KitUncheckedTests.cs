using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class KitUncheckedTests
{
    private static readonly KitUnchecked Check = new();

    public static Example Finds => new(() => new TestJob(), j => j.Window("W01"));

    public static Example Passes => new(() => new TestJob().Window("W01"), j => j.Do(Held(j.House.ItemsOf(ItemKind.CoveringKind).First())));

    [Fact]
    public void AKitThatNobodyCheckedIsNoted()
    {
        var found = Jobs.Roughed().FaultOf(Check, "16/2");
        Assert.Equal("6 values of 16/2 are not checked against the maker's sheet: conductor, stranding, listing, longest run and more.", found.Message);
    }

    [Fact]
    public void OnlyPartsInUseAreNoted() =>
        Assert.Equal(["Roller", "16/2"], Check.Run(Jobs.Roughed().House).Select(r => r.Subject.Latest("name")!.Stored));

    [Fact]
    public void OneValueLeftIsStillNotedAndNoneIsFine()
    {
        var job = Jobs.Roughed();
        foreach (var fact in new Fact[] { CableTypeFacts.Conductor, CableTypeFacts.Stranding, CableTypeFacts.Listing, CableTypeFacts.LongestRun,
            CableTypeFacts.PartsPerRun })
            Checked(job, fact);
        Assert.Equal("1 value of 16/2 is not checked against the maker's sheet: box length.", job.FaultOf(Check, "16/2").Message);
        Checked(job, CableTypeFacts.BoxLength);
        Assert.IsType<Outcome.Fine>(job.Of(Check, "16/2"));
    }

    [Fact]
    public void AValueThatChangesIsToBeCheckedAgain()
    {
        var job = Jobs.Roughed();
        foreach (var fact in FactTable.Of(ItemKind.CableType))
            Checked(job, fact);
        Assert.IsType<Outcome.Fine>(job.Of(Check, "16/2"));
        Assert.IsType<Outcome.Found>(job.SayOf("16/2", CableTypeFacts.LongestRun, "190").Of(Check, "16/2"));
    }

    [Fact]
    public void ValuesThatWereCheckedAgainstAnOlderEditionAreNotedWithBothEditions()
    {
        var job = Jobs.Roughed();
        var edition = AboutSheet.Of(ItemKind.CableType, AboutSheet.Edition);
        job.SayOf("16/2", edition, "2");
        job.Do(KitCheck.All(job.House, job.House.ItemsOf(ItemKind.CableType).First()));
        Assert.IsType<Outcome.Fine>(job.Of(Check, "16/2"));
        Assert.Equal("Checked against edition 2 of the sheet of 16/2 and not against edition 3: conductor, stranding, listing, longest run and more.",
            job.SayOf("16/2", edition, "3").FaultOf(Check, "16/2").Message);
        job.SayOf("16/2", CableTypeFacts.LongestRun, "190");
        Assert.Equal(["1 value of 16/2 is not checked against the maker's sheet: longest run.",
            "Checked against edition 2 of the sheet of 16/2 and not against edition 3: conductor, stranding, listing, box length and more."],
            Check.Run(job.House).Where(r => job.House.NameOf(r.Subject) == "16/2").Select(r => ((Outcome.Found)r.Outcome).Message.In(job.House)));
    }

    private static Draft Held(Item part) =>
        FactTable.Of(part.Kind).Aggregate(new Draft("Roller checked against its sheet"),
            (draft, fact) => draft.PutStored(part.Id, Companion.Checked(fact.Name), "yes"));

    private static void Checked(TestJob job, Fact fact) =>
        job.Do(new Draft("checked").PutStored(job.House.ItemsOf(ItemKind.CableType).First().Id, Companion.Checked(fact.Name), "yes"));

    // Four are named, and "more" are five.
    [Theory]
    [InlineData(1, "5 values of 16/2 are not checked against the maker's sheet: stranding, listing, longest run, box length and more.")]
    [InlineData(2, "4 values of 16/2 are not checked against the maker's sheet: listing, longest run, box length, parts per run.")]
    public void FourAreNamedAndTheRestIsCounted(int held, string said)
    {
        var job = Jobs.Roughed();
        foreach (var fact in new Fact[] { CableTypeFacts.Conductor, CableTypeFacts.Stranding }.Take(held))
            Checked(job, fact);
        Assert.Equal(said, job.FaultOf(Check, "16/2").Message);
    }

    [Fact]
    public void FourOfAnOlderEditionAreNamedToo()
    {
        var edition = AboutSheet.Of(ItemKind.CableType, AboutSheet.Edition);
        var job = Jobs.Roughed().SayOf("16/2", edition, "2");
        var part = job.House.ItemsOf(ItemKind.CableType).First();
        foreach (var fact in new Fact[] { CableTypeFacts.Conductor, CableTypeFacts.Stranding, CableTypeFacts.Listing, CableTypeFacts.LongestRun })
            job.Do(new Draft("checked").PutStored(part.Id, Companion.Checked(fact.Name), SheetMark.For("2")));
        job.SayOf("16/2", edition, "3");
        Assert.Contains("Checked against edition 2 of the sheet of 16/2 and not against edition 3: conductor, stranding, listing, longest run.",
            Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().Select(f => f.Message.In(job.House)));
    }
}
