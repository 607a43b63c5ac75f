using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Tests.Decisions;

public class QuickServiceTests
{
    private static readonly DateOnly Today = new(2027, 3, 2);

    [Theory]
    [InlineData("W01 replaced", "W01 replaced 2027-03-02")]
    [InlineData("w01 motor-replaced yesterday", "W01 motor replaced 2027-03-01")]
    [InlineData("Hall battery changed 2027-02-01", "Hall battery changed 2027-02-01")]
    [InlineData("yearly visit 2027-02-01 @Bo", "yearly visit 2027-02-01")]
    [InlineData("panel P1 Part Replaced", "P1 part replaced 2027-03-02")]
    [InlineData("W01 W01 replaced", "W01 replaced 2027-03-02")]
    [InlineData("W01 w01 motor-replaced yesterday", "W01 motor replaced 2027-03-01")]
    [InlineData("P1 panel P1 part replaced", "P1 part replaced 2027-03-02")]
    [InlineData("hub replaced", "Attic replaced 2027-03-02")]
    [InlineData("Panel repaired", "P1 repaired 2027-03-02")]
    [InlineData("W01 failed, claim C-17, motor dead", "W01 failed 2027-03-02")]
    public void ALineSaysWhatItWasDoneToWhatWasDoneAndWhen(string line, string name)
    {
        var job = ServedHouse.Of();
        Assert.Equal(name, Assert.Single(job.Do(QuickService.Read(job.House, line, Today)).House.Services).Name);
    }

    [Fact]
    public void BehindCommasStandClaimOutcomeAndCauseInAnyOrder()
    {
        var job = ServedHouse.Of();
        job.Do(QuickService.Read(job.House, "W01 replaced @Ash, hums, claim C-1, partly granted, then stops", Today));
        var service = Assert.Single(job.House.Services);
        Assert.Equal(("Ash", "hums, then stops", "C-1", "partly granted"), (service.Show(ServiceFacts.By), service.Show(ServiceFacts.Cause),
            service.Show(ServiceFacts.Claim), service.Show(ServiceFacts.Outcome)));
    }

    [Theory]
    [InlineData("", "Type what it was done to and what was done: ")]
    [InlineData("W01", "Say what was done: replaced, motor replaced, ")]
    [InlineData("W77 replaced", "There is no window W77")]
    [InlineData("replaced", "Say what it was done to: ")]
    [InlineData("W01 yearly visit", "A yearly visit is of the house")]
    [InlineData("P1 motor replaced", "P1 has no motor")]
    [InlineData("W01 battery changed", "W01 has no battery by what is noted of it")]
    [InlineData("W01 replaced someday", "\"someday\" is no date.")]
    [InlineData("W01 replaced, serial A-W01", "A-W01 is the serial of the unit that was taken off.")]
    [InlineData("Attic replaced, serial X-1", "Only a unit that was replaced has another serial")]
    [InlineData("W01 replaced, refused", "Write the number of the claim before what became of it")]
    [InlineData("hub Attick replaced", "There is no hub Attick. There are: Attic.")]
    [InlineData("remote replaced", "Say which remote: Hall, Bed.")]
    [InlineData("Attic battery changed", "Attic has no battery: write part replaced or repaired.")]
    [InlineData("@Kitchen replaced", "Kitchen can't be in service")]
    [InlineData("W01 replaced, serial B-1, serial B-2", "B-1 and B-2 both stand for \"Serial\": type one of them.")]
    [InlineData("W01 replaced, claim C-1, claim C-2", "C-1 and C-2 both stand for ")]
    [InlineData("W01 replaced, claim C-1, granted, refused", "granted and refused both stand for ")]
    [InlineData("W01 W02 replaced", "W01 and W02 both stand there: write the one that it was done to.")]
    public void WhatCanNotBeReadIsRefusedWithWhatToDo(string line, string reason)
    {
        var read = QuickService.Read(ServedHouse.Of().House, line, Today);
        Assert.False(read.Ok);
        Assert.StartsWith(reason, read.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void ALineBeginsWithASortWhereTheNameAloneMeansTwoThings()
    {
        var job = ServedHouse.Of().Add(ItemKind.Hub, "P1");
        var hub = job.House.Hubs.Single(h => h.Name == "P1").Item;
        Assert.Equal("hub P1", QuickService.Called(job.House, hub));
        Assert.Equal("Attic", QuickService.Called(job.House, job.House.Hubs.First(h => h.Name == "Attic").Item));
        Assert.Equal(hub.Id, Assert.Single(job.Do(QuickService.Read(job.House, "hub P1 replaced", Today)).House.Services).About!.Id);
    }

    [Fact]
    public void WithoutAClockTheDayIsAskedFor() =>
        Assert.Equal("Say the day on which it was done, such as 2027-03-02.", QuickService.Read(ServedHouse.Of().House, "W01 replaced").Reason);

    [Fact]
    public void AWindowWithSeveralUnitsIsAskedWhich()
    {
        var job = ServedHouse.Of();
        job.Do(AddItems.Unit(job.House, job.House.FindTag("W02")!.Id));
        Assert.Equal("W02 has several units: write W02A or W02B.", QuickService.Read(job.House, "W02 replaced", Today).Reason);
        Assert.Equal("W02B replaced 2027-03-02", Assert.Single(job.Do(QuickService.Read(job.House, "W02B replaced", Today)).House.Services).Name);
    }

    [Fact]
    public void ARemoteThatIsCalledAsItsRoomIsMeantAndAnyOtherTwoThingsOfOneNameAreAskedWhich()
    {
        var job = ServedHouse.Of().Add(ItemKind.Remote, "Kitchen");
        Assert.Equal(ItemKind.Remote, Assert.Single(job.Serve("Kitchen battery changed").House.Services).About!.Kind);
        Assert.Equal("Attic is more than one thing: write hub Attic or remote Attic.",
            QuickService.Read(job.Add(ItemKind.Remote, "Attic").House, "Attic replaced", Today).Reason);
    }

    [Fact]
    public void AScriptRecordsItByTheSameLine()
    {
        var job = ServedHouse.Of();
        job.Do(SetLine.Read(job.House, "service\tnew\tW01 replaced, claim C-17", Today));
        job.Do(SetLine.Read(job.House, "W01 replaced 2027-03-02\toutcome\tgranted", Today));
        Assert.Equal(ClaimOutcome.Granted, Assert.Single(job.House.Services).Item.Get(ServiceFacts.Outcome));
    }

    [Theory]
    [InlineData("W01 replaced, serial R-1, serial R-2", "R-1 and R-2 both stand for")]
    [InlineData("W01 replaced, claim C1, claim C2", "C1 and C2 both stand for")]
    [InlineData("W01 replaced, claim granted", "\"claim granted\" names no claim")]
    [InlineData("W01 replaced, Serial: R-9", "serial R-9")]
    [InlineData("W01 replaced, serial", "\"serial\" names no number")]
    [InlineData("W01 replaced, claim #", "names no number")]
    public void WhatLooksLikeASerialOrAClaimAndIsNoneIsRefused(string line, string why) =>
        Assert.Contains(why, QuickService.Read(ServedHouse.Of().House, line, new DateOnly(2027, 3, 2)).Reason, StringComparison.Ordinal);

    [Fact]
    public void ACauseMayBeginLikeThem() => Assert.True(QuickService.Read(ServedHouse.Of().House, "W01 repaired 2027-03-02, serials unreadable").Ok);
}
