using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Controls;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Walk;

namespace TrimOut.Screens.Shell;

/// <summary>
/// The screen on which the field that mends a finding is changed: its sheet; for the mark of a step the walk, for what a remote or a preset moves the
/// controls, and for what two laptops disagree about removing the punch list.
/// </summary>
internal static class MendedAt
{
    /// <summary>That screen, with the field under the cursor.</summary>
    public static IScreen Of(ScreenContext context, FieldRef field)
    {
        var house = context.House;
        if (field.Field == Item.RemovedField)
            return PunchScreen.OnRemoved(context, field.Item);
        if (context.Steps.Steps.FirstOrDefault(s => s.Field == field.Field) is { } step && WalkScreen.OnStep(context, step, field.Item) is { } walk)
            return walk;
        var key = field.Field.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon ? field.Field[(colon + 1)..] : "";
        if (house.Find(field.Item) is { } item && FactTable.Find(item.Kind, field.Field) is { } fact && house.FindUnit(key) is not null)
        {
            if (fact == RemoteFacts.Moves)
                return ControlsScreen.On(context, item.Id, key);
            if (fact == PresetFacts.Position)
                return ControlsScreen.On(context, item.Under, key);
        }
        return SheetScreen.Mending(house, field);
    }
}
