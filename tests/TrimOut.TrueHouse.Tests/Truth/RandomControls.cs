using TrimOut.Core.Facts;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>Rolls a hub, a remote for each room, presets and limits.</summary>
internal static class RandomControls
{
    public static void Roll(RealHouse house, Dice dice)
    {
        var units = house.Units.ToList();
        var busiest = house.Rooms.Max(r => units.Count(u => u.Opening.Room == r));
        house.HubSheets.Add(new ControlSheet { Name = "Radio box", Most = units.Count + house.Rooms.Count + dice.Whole(4, 40) });
        house.RemoteSheets.Add(new ControlSheet { Name = "Hand remote", Most = busiest + dice.Whole(1, 9) });
        house.RemoteSheets.Add(new ControlSheet { Name = "Plate remote", Most = busiest + dice.Whole(1, 5), Gangs = 1 });
        foreach (var room in house.Rooms)
        {
            var remote = new RealRemote { Name = room.Remote, Room = room, Sheet = dice.Of(house.RemoteSheets) };
            remote.Plate = remote.Sheet.Gangs > 0 ? "1-gang, alone" : "";
            remote.Moves.AddRange(units.Where(u => u.Opening.Room == room));
            remote.Presets["Evening"] = [.. remote.Moves];
            house.Remotes.Add(remote);
            var open = dice.Between(12, 40);
            foreach (var unit in remote.Moves)
            {
                unit.HubName = $"{room.Name} {unit.Key}";
                unit.OpenGap = open + dice.Between(-0.6, 0.6);
                unit.CloseGap = dice.Between(0, 0.7);
                // What stacks leaves the glass free, and lets its bar up to where the limit was set.
                var opening = unit.Opening;
                if (unit.Kind.Form == RaisedForm.Stack)
                {
                    opening.GlassBelowHead = Math.Max(opening.GlassBelowHead,
                        unit.Kind.Raised(opening.Finished.Height + opening.HeadAbove) - opening.HeadAbove + unit.OpenGap);
                }
            }
        }
    }
}
