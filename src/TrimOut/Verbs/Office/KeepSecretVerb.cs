using System.CommandLine;
using TrimOut.Desks;
using TrimOut.Desks.Secrets;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office keep-secret</c>: the secret of a credentials file goes into the system's own store, or back.</summary>
internal static class KeepSecretVerb
{
    public static Command Build()
    {
        var back = new Option<bool>("--back") { Description = "Put the secret into the file again, and have the store forget it." };
        var forget = new Option<bool>("--forget") { Description = "Have the store forget the secret, and leave the file as it is." };
        var verb = new Command("keep-secret", "Move the secret of a credentials file into the system's own store of secrets: the keyring (Linux, by "
            + "secret-tool), the keychain (macOS) or the Credential Manager (Windows). It is taken out of the file once the store has handed it out again.")
        {
            OfficeVerb.CredentialsOption, back, forget,
        };
        verb.Validators.Add(parsed =>
        {
            if (parsed.GetValue(back) && parsed.GetValue(forget))
                parsed.AddError("Choose --back or --forget: --back has the store forget the secret once the file holds it.");
        });
        verb.SetAction(parsed =>
        {
            var kept = new KeptSecret(OfficePlace.FileOf(parsed.GetValue(OfficeVerb.CredentialsOption)), SystemSecrets.Here);
            Common.Say(parsed.GetValue(back) ? kept.PutBack(CancellationToken.None) : parsed.GetValue(forget) ? kept.Forget(CancellationToken.None)
                : kept.Move(CancellationToken.None));
            return ExitCode.Fine;
        });
        return verb;
    }
}
