using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>Rolls what fails in the years after the handover, and is replaced as it should be.</summary>
internal static class RandomServices
{
    public static void Roll(RealHouse house, Dice dice)
    {
        var day = house.Days[Stage.Service];
        if (dice.Chance(0.6))
        {
            var unit = dice.Of([.. house.Units]);
            house.Services.Add(new RealService
            {
                To = ItemKind.Unit,
                Name = unit.Key,
                What = ServiceKind.Replaced,
                On = day,
                Cause = "motor grinds",
                Serial = $"{unit.Serial}-B",
                Claim = $"C-{house.Seed}",
                Outcome = dice.Of([ClaimOutcome.Granted, ClaimOutcome.Refused]),
            });
        }
        if (dice.Chance(0.3))
        {
            var unit = dice.Of([.. house.Units]);
            if (house.Services.All(s => s.Name != unit.Key))
                house.Services.Add(new RealService { To = ItemKind.Unit, Name = unit.Key, What = ServiceKind.MotorReplaced, On = day, Cause = "no sound" });
        }
        if (house.Panels.Count > 0 && dice.Chance(0.4))
            house.Services.Add(new RealService { To = ItemKind.Panel, Name = dice.Of(house.Panels).Name, What = ServiceKind.Replaced, On = day });
        if (dice.Chance(0.3))
            house.Services.Add(new RealService { To = ItemKind.Hub, Name = dice.Of(house.Hubs), What = ServiceKind.Replaced, On = day });
        if (house.Remotes.Count > 0 && dice.Chance(0.3))
            house.Services.Add(new RealService { To = ItemKind.Remote, Name = dice.Of(house.Remotes).Name, What = ServiceKind.Replaced, On = day });
    }
}
