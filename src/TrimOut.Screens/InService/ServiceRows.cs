using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.InService;
using TrimOut.Core.Units;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.InService;

/// <summary>A row of a house in service: something that is due, or something that was done.</summary>
/// <param name="Id">Tells it from the others.</param>
/// <param name="Text">How it reads.</param>
/// <param name="Presses">Whether it is to be looked at now.</param>
/// <param name="Done">What was done; null for what is due.</param>
internal sealed record ServiceRow(string Id, string Text, bool Presses, Service? Done)
{
    /// <summary>What a filter looks through.</summary>
    public string Sought => Done is not { } done ? Text
        : $"{done.Name} {done.Show(ServiceFacts.By)} {done.Show(ServiceFacts.Cause)} {done.TakenOff} {done.NewSerial} {done.Claim}";
}

/// <summary>The rows of a house in service, and how they read.</summary>
internal static class ServiceRows
{
    /// <summary>What is due, what presses first; then what was done.</summary>
    public static IReadOnlyList<ServiceRow> Of(ScreenContext context) =>
    [
        .. DueInService.Of(context.House, context.Today).OrderByDescending(d => d.Pressing).Select(d => (d.Pressing, Said: d.Say.In(context.House)))
            .Select(d => new ServiceRow($"due: {d.Said}", $" {d.Said}", d.Pressing, null)),
        .. context.House.Services.Select(s => new ServiceRow(s.Id, Text(s), s.ClaimIsOpen || s.IsOpenFailure, s)),
    ];

    /// <summary>How much is due and was done.</summary>
    public static string InWords(ScreenContext context)
    {
        var due = DueInService.Of(context.House, context.Today).Count();
        var done = context.House.Services.Count();
        return $"{(due == 0 ? "Nothing is due that is known." : $"Due: {NumberText.Plain(due)}, first.")} "
            + (done == 0 ? "Nothing was done yet; n records what was done." : $"Done: {NumberText.Plain(done)}.");
    }

    private static string Text(Service service) =>
        $" {Day(service)}  {About(service)}{service.Show(ServiceFacts.Kind)}{(service.ClaimIsOpen ? ", claim open" : "")}"
        + $"{(service.WaitsForMaker ? ", waits for the maker" : "")}";

    private static string Day(Service service) => service.Show(ServiceFacts.On) is { Length: > 0 } on ? on : "no day yet";

    private static string About(Service service) => service.About is { Kind: not ItemKind.House } about ? $"{service.House.NameOf(about)} " : "";
}
