// Serves the field app. Everything the technician does happens in the browser; this host only hands out files.
var builder = WebApplication.CreateBuilder(args);
builder.WebHost.UseStaticWebAssets();

var app = builder.Build();
app.Use((context, next) =>
{
    context.Response.Headers.XContentTypeOptions = "nosniff";
    context.Response.Headers["Referrer-Policy"] = "no-referrer";
    return next(context);
});
app.MapStaticAssets();
// Addresses inside the app, such as /visit/…, are the app's own to resolve.
app.MapFallbackToFile("index.html");
await app.RunAsync();
