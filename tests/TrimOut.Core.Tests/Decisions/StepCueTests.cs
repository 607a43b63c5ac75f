using TrimOut.Core.Facts;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Tests.Decisions;

public class StepCueTests
{
    [Fact]
    public void EachStepHasTheHoldAndTheTextOfItsOwn()
    {
        var job = BlankHouse.With("W01").SayOf("Roller", CoveringKindFacts.LimitHold, "3").SayOf("Roller", CoveringKindFacts.LimitCue, "it clicks")
            .SayOf("Roller", CoveringKindFacts.LimitsHow, "Send it there.").SayOf("Roller", CoveringKindFacts.PresetHold, "5")
            .SayOf("Roller", CoveringKindFacts.PresetCue, "the bar dips once").SayOf("Roller", CoveringKindFacts.PairHold, "8")
            .SayOf("Roller", CoveringKindFacts.PairCue, "it beeps twice").SayOf("Roller", CoveringKindFacts.LevelHow, "Tap the key.");
        var said = StepCue.Steps.ToDictionary(id => id, id => StepCue.Of(StepList.Find(id)!)!.Said(job.Unit("W01").Kind!));
        Assert.Equal("Hold 8 s until it beeps twice.", said["hub-paired"]);
        Assert.Equal("Hold 8 s until it beeps twice.", said["remotes-paired"]);
        Assert.Equal("Send it there. Hold 3 s until it clicks.", said["open-limit"]);
        Assert.Equal("Send it there. Hold 3 s until it clicks.", said["close-limit"]);
        Assert.Equal("Tap the key.", said["level-with-neighbours"]);
        Assert.Equal("Hold 5 s until the bar dips once.", said["preset-stored"]);
        Assert.False(said.ContainsKey("moved-by-all"));
    }

    [Fact]
    public void WhatTheSheetWasNotReadForIsNamed()
    {
        var kind = BlankHouse.With("W01").Unit("W01").Kind!;
        var cue = StepCue.Of(StepList.Find("preset-stored")!)!;
        Assert.Equal("", cue.Said(kind));
        Assert.Equal([CoveringKindFacts.PresetHold, CoveringKindFacts.PresetCue], cue.Blank(kind));
    }
}
