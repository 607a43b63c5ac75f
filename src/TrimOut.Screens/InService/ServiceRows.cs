using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Screens.InService;

/// <summary>How what was done in service reads in a list.</summary>
internal static class ServiceRows
{
    public static string Text(Service service) =>
        $" {Day(service)}  {About(service)}{service.Show(ServiceFacts.Kind)}{(service.ClaimIsOpen ? ", claim open" : "")}";

    /// <summary>What a filter looks through.</summary>
    public static string Sought(Service service) => $"{service.Name} {service.Show(ServiceFacts.By)} {service.Show(ServiceFacts.Cause)} "
        + $"{service.Show(ServiceFacts.OldSerial)} {service.NewSerial} {service.Claim}";

    private static string Day(Service service) => service.Show(ServiceFacts.On) is { Length: > 0 } on ? on : "no day yet";

    private static string About(Service service) => service.About is { Kind: not ItemKind.House } about ? $"{service.House.NameOf(about)} " : "";
}
