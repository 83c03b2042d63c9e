using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Web.Commands;

/// <summary>Opens an account; standard output holds its one-time password and nothing else.</summary>
internal static class AddUser
{
    public static Task<int> RunAsync(TextWriter output, string name, string role) => CommandServices.WithAsync(async (services, _) =>
    {
        await LabStorage.MigrateAsync(services);
        var demo = string.Equals(Environment.GetEnvironmentVariable("LABVOLATILITY_DEMO"), "true", StringComparison.OrdinalIgnoreCase);
        await services.GetRequiredService<MakeSettings>().Run(demo);
        var answer = await services.GetRequiredService<UserAdd>().Run(name, role);
        if (!answer.Ok)
            throw new CommandRefusedException(answer.Text);
        await output.WriteLineAsync(answer.Value!.OneTimePassword);
        return 0;
    });
}
