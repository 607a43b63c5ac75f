using System.CommandLine;
using TrimOut.Desks;
using TrimOut.Desks.Secrets;
using TrimOut.Office;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office</c>: the copy of all houses at the office, and who may do what there.</summary>
internal static class OfficeVerb
{
    /// <summary>Which credentials are used.</summary>
    public static Option<string?> CredentialsOption { get; } = new("--credentials")
    {
        Description = "The credentials file of this device. Left out: TRIMOUT_OFFICE in the environment, else office.credentials in your TrimOut folder.",
        HelpName = "file",
    };

    public static Command Build() => new("office", "Exchange houses with the office, and say who may do what there.")
    {
        ExchangeVerb.Build(),
        ExchangeVerb.BuildSend(),
        ExchangeVerb.BuildFetch(),
        StatusVerb.Build(),
        HousesVerb.Build(),
        TakeVerb.Build(),
        LetInVerb.Build(),
        DeviceVerbs.BuildEnroll(),
        DeviceVerbs.BuildShutOut(),
        ListsVerb.Build(),
        KeepSecretVerb.Build(),
        SetUpVerb.Build(),
        TrialVerb.Build(),
    };

    /// <summary>The credentials that a command line names, with their secret.</summary>
    public static Credentials By(ParseResult parsed) => SystemSecrets.WithSecret(Named(parsed), SystemSecrets.Here, CancellationToken.None);

    /// <summary>The same without asking anybody for the secret: for what connects to nothing.</summary>
    public static Credentials Named(ParseResult parsed) => OfficePlace.Credentials(parsed.GetValue(CredentialsOption));

    /// <summary>Does something with the office, until it is done: a command line has nothing else to do meanwhile.</summary>
    public static T With<T>(Credentials office, Func<OfficeConnection, Task<T>> work) => Waited(async () =>
    {
        var connection = await OfficeConnection.Open(office, CancellationToken.None).ConfigureAwait(false);
        await using (connection.ConfigureAwait(false))
            return await work(connection).ConfigureAwait(false);
    });

    /// <summary>Waits for some work.</summary>
    public static T Waited<T>(Func<Task<T>> work) => work().GetAwaiter().GetResult();
}
