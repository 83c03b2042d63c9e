using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Web.Commands;

/// <summary>Opens an account; standard output holds its one-time password and nothing else.</summary>
internal static class AddUser
{
    public static Task<int> RunAsync(CommandWorld world, string name, string role) => CommandServices.WithAsync(world, async (services, _) =>
    {
        await LabStorage.MigrateAsync(services);
        var demo = string.Equals(world.Setting("LABVOLATILITY_DEMO"), "true", StringComparison.OrdinalIgnoreCase);
        await services.GetRequiredService<MakeSettings>().Run(demo);
        var answer = await services.GetRequiredService<UserAdd>().Run(name, role);
        if (!answer.Ok)
            throw new CommandRefusedException(answer.Text);
        await world.Output.WriteLineAsync(answer.Value!.OneTimePassword);
        return 0;
    });
}
