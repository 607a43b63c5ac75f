using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHandover;

/// <summary>The binder is given before any volts are read.</summary>
public sealed class BinderGivenBeforeVoltsAreRead : Fault
{
    public override string Goes => "the binder is given before any volts are read";

    public override string Costs => "readings that are missing in the book for good";

    public override Stage In => Stage.Hung;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var day = Installer.Day(house.Days[Stage.Hung]);
        house.Slips.Does(Stage.Hung, i =>
        {
            i.Book.Put(Book.JobItself, (HouseFacts.BinderGivenOn, day));
            i.Book.Do(MarkStep.Done(new JobItself(i.Book.House), StepList.Find("binder-given")!).Value);
        });
        return From(Stage.Hung, Book.JobItself);
    }
}
