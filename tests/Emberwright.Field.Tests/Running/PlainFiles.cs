using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Logging;

namespace Emberwright.Field.Tests.Running;

/// <summary>Any web host that knows nothing of the app: serves a folder's files below a path, and no more.</summary>
internal sealed class PlainFiles : IAsyncDisposable
{
    private readonly WebApplication app;

    private PlainFiles(WebApplication app, string address)
    {
        this.app = app;
        Address = address;
    }

    public string Address { get; }

    public static async Task<PlainFiles> Start(string folder, string path)
    {
        var origin = $"http://localhost:{Host.FreePort()}";
        var builder = WebApplication.CreateBuilder(["--urls", origin]);
        builder.Logging.ClearProviders();
        var app = builder.Build();
        var files = new PhysicalFileProvider(folder);
        app.UseDefaultFiles(new DefaultFilesOptions { FileProvider = files, RequestPath = path });
        app.UseStaticFiles(new StaticFileOptions
        {
            FileProvider = files,
            RequestPath = path,
            ServeUnknownFileTypes = true,
            ContentTypeProvider = new FileExtensionContentTypeProvider(),
        });
        app.Run(context =>
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return Task.CompletedTask;
        });
        await app.StartAsync();
        return new PlainFiles(app, origin + path + "/");
    }

    public ValueTask DisposeAsync() => app.DisposeAsync();
}
