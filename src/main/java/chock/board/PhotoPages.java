package chock.board;

import chock.board.store.Kept;
import chock.board.store.Photos.Photo;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.util.List;

/** Adding a photo to an entry, and looking at it; for people and for programs. */
final class PhotoPages {
    private final Shop shop;
    private final Judging judging;
    private final Album album;
    private final Clock clock;

    PhotoPages(Shop shop, Judging judging, Album album, Clock clock) {
        this.shop = shop;
        this.judging = judging;
        this.album = album;
        this.clock = clock;
    }

    record Add(Views.Frame frame, String id, String name, String at, String entry, String says, List<String> faults) { }

    void on(RoutesConfig routes) {
        routes.get("/machines/{id}/photo", ctx -> form(ctx, Pages.query(ctx, "entry"), List.of()), Action.WRITE_ENTRY);
        routes.post("/machines/{id}/photo", this::add, Action.WRITE_ENTRY);
        routes.get("/machines/{id}/photos/{digest}", this::show, Action.READ);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/machines/{id}/photos", Action.READ, "List the photos of a machine", this::list).answers(200, "photos"),
                Route.post("/api/machines/{id}/photos", Action.WRITE_ENTRY, "Add a photo to an entry: JPEG, PNG or WebP, drawn anew and kept as JPEG without position", this::take).query("entry", "id of the entry").body("image").answers(201, "photo"),
                Route.get("/api/machines/{id}/photos/{digest}", Action.READ, "Fetch a photo", this::show).answers(200, "image"));
    }

    private Kept kept(Context ctx) {
        return shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    private void form(Context ctx, String entryId, List<String> faults) {
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, clock.instant());
        Entry entry = record.entry(entryId).orElseThrow(Refusal::notFound);
        Views.Line line = Views.Line.of(entry, record.nameOf(entry.by()), "", "", "", List.of(), "");
        Pages.show(ctx, "photo", new Add(Pages.frame(ctx, "Photo, " + kept.id()), kept.id(), Pages.name(record), "/machines/" + Query.encoded(kept.id()), entry.id(),
                line.at() + " " + line.by() + " " + line.deed() + " " + line.what() + (line.is().isEmpty() ? "" : ": " + line.is()) + ". " + line.place() + ".", faults));
    }

    private void add(Context ctx) throws IOException {
        String entry = Pages.text(ctx, "entry");
        UploadedFile file = ctx.uploadedFile("photo");
        if (file == null || file.size() == 0) {
            ctx.status(422);
            form(ctx, entry, List.of("No photo was chosen."));
            return;
        }
        byte[] bytes;
        try (InputStream in = file.content()) {
            bytes = in.readNBytes(Picture.LARGEST + 1);
        }
        try {
            Kept kept = kept(ctx);
            album.add(kept, entry, bytes, Guard.visitor(ctx).account());
            ctx.redirect("/machines/" + Query.encoded(kept.id()) + "?entries=all#" + Query.encoded(entry), HttpStatus.SEE_OTHER);
        } catch (UnusableInput e) {
            ctx.status(422);
            form(ctx, entry, RunPages.words(e));
        }
    }

    /** Always as a JPEG, whatever is asked for: that is what was kept. */
    private void show(Context ctx) {
        String digest = ctx.pathParam("digest");
        byte[] bytes = digest.matches("[0-9a-f]{64}") ? album.bytes(ctx.pathParam("id"), digest).orElseThrow(Refusal::notFound) : null;
        if (bytes == null) {
            throw Refusal.notFound();
        }
        ctx.contentType("image/jpeg").header("Content-Disposition", "inline; filename=\"" + digest.substring(0, 12) + ".jpg\"").header("Content-Security-Policy", "default-src 'none'; sandbox; frame-ancestors 'none'").result(bytes);
    }

    private static ObjectNode node(Photo photo) {
        return JsonNodeFactory.instance.objectNode().put("entry", photo.entry()).put("digest", photo.digest()).put("width", photo.width()).put("height", photo.height()).put("size", photo.size()).put("by", photo.by()).put("at", photo.at().toString());
    }

    private void list(Context ctx) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        album.of(kept(ctx).id()).values().forEach(photos -> photos.forEach(photo -> all.add(node(photo))));
        ctx.contentType("application/json").result(all.toString());
    }

    private void take(Context ctx) {
        Album.Added added = album.add(kept(ctx), Pages.query(ctx, "entry"), ctx.bodyAsBytes(), Guard.visitor(ctx).account());
        ctx.status(201).contentType("application/json").result(node(added.photo()).put("positionLeftOut", added.hadPosition()).toString());
    }
}
