import { initSync } from "./app-1466e9e9c7f166c6.js";

let sharedImports = undefined;
function getSharedImports() {
    if (sharedImports === undefined) {
        sharedImports = { __wasm_split: { __canary_40981064b7434619: ~0xdead, } };
        const { __indirect_function_table, __wasm_split_shared0, memory,  } = initSync(undefined, undefined);
        Object.assign(sharedImports.__wasm_split, { __indirect_function_table, __wasm_split_shared0, memory,  });
    }
    return sharedImports;
}
function wrapAsyncCb(callee) {
    return async (callbackIndex, callbackData) => {
        let success;
        try {
            await callee();
            success = true;
        } catch (e) {
            console.error(e);
            success = false;
        } finally {
            const sharedImports = getSharedImports();
            sharedImports.__wasm_split.__indirect_function_table.get(callbackIndex)(callbackData, success);
        }
    }
}
function makeLoad(fetcher, deps) {
    const loader = async () => {
        const parallelStuff = deps.map(d => d());
        const instantiate = fetcher();
        await Promise.all(parallelStuff);
        const imports = getSharedImports();
        return instantiate(imports);
    };
    let loadingModule = undefined;
    return () => {
        if (loadingModule === undefined) {
            const thisLoad = loader();
            // Memoize successes only: a rejected load must not be cached for
            // the lifetime of the session, or one transient network failure
            // permanently breaks the module. Clearing on rejection lets the
            // next call (e.g. the Rust side re-invoking load after a failed
            // callback) start a fresh attempt.
            thisLoad.catch(() => {
                if (loadingModule === thisLoad) loadingModule = undefined;
            });
            loadingModule = thisLoad;
        }
        return loadingModule;
    }
}
async function debugWrap(instantiate) {
    try {
        return await instantiate;
    } catch (e) {
        if (e instanceof WebAssembly.LinkError && e.message.includes("__canary")) {
            console.error("wasm-split: It looks like you are trying to load a split module that does not belong to the same compilation unit. This is not supported.")
        }
        throw e;
    }
}
/* bench, book, chairside, class, packed_book */
const __chunk_10 = makeLoad(() => {
    const src = fetch(new URL("./chunk-10-3960335328c01b24.wasm", import.meta.url), { integrity: "sha256-OWAzUyjAGyTnOf+Layco+4GCMl46Nd+PfFvWeuVSDzg=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, class, packed_book, record, study, teaching */
const __chunk_11 = makeLoad(() => {
    const src = fetch(new URL("./chunk-11-a5c48d803789c332.wasm", import.meta.url), { integrity: "sha256-pcSNgDeJwzJAvBvMpOgvc7hRNFxbjzUJjfNpHIPR68Q=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, class, packed_book, record, study, teaching, write */
const __chunk_12 = makeLoad(() => {
    const src = fetch(new URL("./chunk-12-9fb51be88f8e673c.wasm", import.meta.url), { integrity: "sha256-n7Ub6I+OZzx4zeieuKWdVcX6YBRiUMQVkJideqdppvI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, class, packed_book, record, teaching, write */
const __chunk_13 = makeLoad(() => {
    const src = fetch(new URL("./chunk-13-12a126834b1d335b.wasm", import.meta.url), { integrity: "sha256-EqEmg0sdM1vE9wcXawBYkTI/hb6n7cUIk8XAXciV9gM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, class, packed_book, study */
const __chunk_14 = makeLoad(() => {
    const src = fetch(new URL("./chunk-14-2c47cf399facf781.wasm", import.meta.url), { integrity: "sha256-LEfPOZ+s94Gf4Zm7BCpJPgCuYnk+3jMp18n7dArNV0w=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, class, packed_book, study, teaching */
const __chunk_15 = makeLoad(() => {
    const src = fetch(new URL("./chunk-15-c7dd3711f90f70d8.wasm", import.meta.url), { integrity: "sha256-x903EfkPcNh88WLXnSd+s+Np/Qm97UxC2TVa1ttiyLg=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, class, packed_book, study, teaching, write */
const __chunk_16 = makeLoad(() => {
    const src = fetch(new URL("./chunk-16-00c6626fdfd2ff7e.wasm", import.meta.url), { integrity: "sha256-AMZib9/S/35NFUqlNnm2gS9jeLenv2fk7SQ8sUU0d1A=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, class, packed_book, study, write */
const __chunk_17 = makeLoad(() => {
    const src = fetch(new URL("./chunk-17-068b7e2c139034ea.wasm", import.meta.url), { integrity: "sha256-Bot+LBOQNOr0bG7TFy5L6roOpYFQ3SVXpAnzeBT7AAA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, class, packed_book, write */
const __chunk_18 = makeLoad(() => {
    const src = fetch(new URL("./chunk-18-547fca8090f8197b.wasm", import.meta.url), { integrity: "sha256-VH/KgJD4GXtWBZ1FuC3IO5Qcu34SkSJH/f6i+EnGOLM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, packed_book, study, teaching, write */
const __chunk_19 = makeLoad(() => {
    const src = fetch(new URL("./chunk-19-50a04c2a274a5d7f.wasm", import.meta.url), { integrity: "sha256-UKBMKidKXX8BaQTqlfNK/XM9JvS5oK55TtmIyRhhasY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, chairside, packed_book, teaching */
const __chunk_20 = makeLoad(() => {
    const src = fetch(new URL("./chunk-20-66ae6d53f0661c81.wasm", import.meta.url), { integrity: "sha256-Zq5tU/BmHIHMHUEg68Asm4B2izhtqIEEhno1cj6dz90=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, class, packed_book, record, study, write */
const __chunk_22 = makeLoad(() => {
    const src = fetch(new URL("./chunk-22-b009dce066475d08.wasm", import.meta.url), { integrity: "sha256-sAnc4GZHXQjbqBASuJUclljMdvFEQptSAi+Amj5GmO8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, class, packed_book, study, write */
const __chunk_24 = makeLoad(() => {
    const src = fetch(new URL("./chunk-24-2f0c1605969ee6c6.wasm", import.meta.url), { integrity: "sha256-LwwWBZae5sZpy37ORhKYs8SruYqyWWBni944bfIfyeY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, book, packed_book, study, write */
const __chunk_25 = makeLoad(() => {
    const src = fetch(new URL("./chunk-25-e2ccc6f39e7cfab4.wasm", import.meta.url), { integrity: "sha256-4szG8558+rSS+bPfiPVx63QowsNSDTobu9k8KVrpd7k=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside */
const __chunk_26 = makeLoad(() => {
    const src = fetch(new URL("./chunk-26-4d05a9315cd82ef4.wasm", import.meta.url), { integrity: "sha256-TQWpMVzYLvQzOFdnXdVLjY1d7pN7LCPt0Jgheu+7omQ=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class */
const __chunk_27 = makeLoad(() => {
    const src = fetch(new URL("./chunk-27-d353516bcc06f49c.wasm", import.meta.url), { integrity: "sha256-01NRa8wG9JwaJ3MCJCDytqrtqbzUMbpm9eGIiKq8eiA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, packed_book, record, study, teaching, write */
const __chunk_28 = makeLoad(() => {
    const src = fetch(new URL("./chunk-28-ff7ffc6047d0aee1.wasm", import.meta.url), { integrity: "sha256-/3/8YEfQruEvfJxFZ44slJTwltTKTqQFIpOIHoZGe+g=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, packed_book, study, teaching, write */
const __chunk_29 = makeLoad(() => {
    const src = fetch(new URL("./chunk-29-92aaa76236f3b116.wasm", import.meta.url), { integrity: "sha256-kqqnYjbzsRbJcWuRY5KbYqkks/O6EdeN4FTZALwXLpk=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, packed_book, study, write */
const __chunk_30 = makeLoad(() => {
    const src = fetch(new URL("./chunk-30-7a6d6980695694eb.wasm", import.meta.url), { integrity: "sha256-em1pgGlWlOvnLvlX+kFQyEil41doyOMpVaRXY4ejpDM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, packed_book, teaching, write */
const __chunk_31 = makeLoad(() => {
    const src = fetch(new URL("./chunk-31-2be8f62090360312.wasm", import.meta.url), { integrity: "sha256-K+j2IJA2AxKyI6WPLx1ElXc6jhXl6AY0+lbRCYehVVk=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, packed_book, write */
const __chunk_32 = makeLoad(() => {
    const src = fetch(new URL("./chunk-32-c8522c475a95d51f.wasm", import.meta.url), { integrity: "sha256-yFIsR1qV1R+HLtqGcESsMHGs6hzCR7JayNmZKGq2eqs=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, record, study */
const __chunk_33 = makeLoad(() => {
    const src = fetch(new URL("./chunk-33-35e4c58561e22bda.wasm", import.meta.url), { integrity: "sha256-NeTFhWHiK9omINgOBYiRSG/fEe0+eYH2QJoz6ojtf7c=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, record, study, teaching */
const __chunk_34 = makeLoad(() => {
    const src = fetch(new URL("./chunk-34-7e8df5d4077940e0.wasm", import.meta.url), { integrity: "sha256-fo311Ad5QOBeKddcEFGN6FLimWyoILkA96p7C8tIt9c=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, record, study, teaching, write */
const __chunk_35 = makeLoad(() => {
    const src = fetch(new URL("./chunk-35-ee17bee595e55ed4.wasm", import.meta.url), { integrity: "sha256-7he+5ZXlXtRw9yL6xj7GGEXkTH2HlnTecerPQL36yEY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, record, study, write */
const __chunk_36 = makeLoad(() => {
    const src = fetch(new URL("./chunk-36-81325bc75231b0a3.wasm", import.meta.url), { integrity: "sha256-gTJbx1IxsKOPo9txtPNUPz2ancxZ51XluzPTVcV1gp8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, record, teaching, write */
const __chunk_37 = makeLoad(() => {
    const src = fetch(new URL("./chunk-37-905944735a9fb69b.wasm", import.meta.url), { integrity: "sha256-kFlEc1qftpsTO9+Kd2KBy9McrUc1HjuJ0DYB7kuIqAY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, study */
const __chunk_38 = makeLoad(() => {
    const src = fetch(new URL("./chunk-38-9aedc943a513f5db.wasm", import.meta.url), { integrity: "sha256-mu3JQ6UT9dt/RRF/+kxBjbD+IWd0DkbylQ0GVCSjrTs=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, study, teaching */
const __chunk_39 = makeLoad(() => {
    const src = fetch(new URL("./chunk-39-34e69e3d259383ef.wasm", import.meta.url), { integrity: "sha256-NOaePSWTg+/Zy3/2Up0oQQzsj14g1wLmnYorFdnwC/U=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, study, teaching, write */
const __chunk_40 = makeLoad(() => {
    const src = fetch(new URL("./chunk-40-b05cbc9252c86c5a.wasm", import.meta.url), { integrity: "sha256-sFy8klLIbFo95Psxq0g5yWSFcVWuJbO1F4cAH+8GCQ0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, study, write */
const __chunk_41 = makeLoad(() => {
    const src = fetch(new URL("./chunk-41-1de3fee29734464f.wasm", import.meta.url), { integrity: "sha256-HeP+4pc0Rk+lCRss+pV3ruNtG5nC9mk2pxXHWHoBDDs=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, teaching */
const __chunk_42 = makeLoad(() => {
    const src = fetch(new URL("./chunk-42-2eed5e9561bf1f05.wasm", import.meta.url), { integrity: "sha256-Lu1elWG/HwWiVUCS6VfTXxvWiKte+rKRoYycZVF6bW8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, teaching, write */
const __chunk_43 = makeLoad(() => {
    const src = fetch(new URL("./chunk-43-2e3d7877766fa4f7.wasm", import.meta.url), { integrity: "sha256-Lj14d3ZvpPeoRc4655fGZ3y5N2CedVrnSEc42x6/o4Q=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, class, write */
const __chunk_44 = makeLoad(() => {
    const src = fetch(new URL("./chunk-44-18b5a99cd6f0ca2c.wasm", import.meta.url), { integrity: "sha256-GLWpnNbwyizR1q5tsV3uqFr/0NhYK6vtehBV8eNMlk8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, packed_book, study, teaching, write */
const __chunk_45 = makeLoad(() => {
    const src = fetch(new URL("./chunk-45-a735c9ca25d46cdf.wasm", import.meta.url), { integrity: "sha256-pzXJyiXUbN903+vk/viCStL3PoBjquXOA7nXic+maVA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, record */
const __chunk_46 = makeLoad(() => {
    const src = fetch(new URL("./chunk-46-f941c0e2faf53e7b.wasm", import.meta.url), { integrity: "sha256-+UHA4vr1PnuROq7CrS/1oljAhDsJOGcHcuxrzdZIeAs=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, record, study */
const __chunk_47 = makeLoad(() => {
    const src = fetch(new URL("./chunk-47-8e24ef6f82bae451.wasm", import.meta.url), { integrity: "sha256-jiTvb4K65FFAlLqzDTIRjz/Y2jOvcb7yfVNsWjF1deE=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, record, study, teaching */
const __chunk_48 = makeLoad(() => {
    const src = fetch(new URL("./chunk-48-78f31bb5115d89fa.wasm", import.meta.url), { integrity: "sha256-ePMbtRFdifo1CmmcPPVU9ZHZmKzm74Tf49D6kOKLuy0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, record, study, teaching, write */
const __chunk_49 = makeLoad(() => {
    const src = fetch(new URL("./chunk-49-132008394fb9a760.wasm", import.meta.url), { integrity: "sha256-EyAIOU+5p2B+DGrt3voJoRKBTMqXebubn78HzM+9wEQ=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, record, teaching, write */
const __chunk_50 = makeLoad(() => {
    const src = fetch(new URL("./chunk-50-d2f1db73fbe27bc8.wasm", import.meta.url), { integrity: "sha256-0vHbc/vie8ggIuPccCsxUEhuypXc4ruZNutLYDbV6kM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, study */
const __chunk_51 = makeLoad(() => {
    const src = fetch(new URL("./chunk-51-d7f6ea2208b2c4c3.wasm", import.meta.url), { integrity: "sha256-1/bqIgiyxMMk3avk4Dd3xsI7gez4cgmQ43pthoRMp48=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, study, teaching */
const __chunk_52 = makeLoad(() => {
    const src = fetch(new URL("./chunk-52-46e6459eec9951ba.wasm", import.meta.url), { integrity: "sha256-RuZFnuyZUbrgN8kgBniEMjiyWkAePHVDBGHTIgJee2I=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, study, teaching, write */
const __chunk_53 = makeLoad(() => {
    const src = fetch(new URL("./chunk-53-efedf4170f80725a.wasm", import.meta.url), { integrity: "sha256-7+30Fw+AcloNHxfSVRbn6T3eQKwckmOkwjDazoaxxng=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, study, write */
const __chunk_54 = makeLoad(() => {
    const src = fetch(new URL("./chunk-54-2e9fe6c613e5b799.wasm", import.meta.url), { integrity: "sha256-Lp/mxhPlt5mGmuvFd1YbXgv958Yq5eEL0PRtkguXscA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, teaching */
const __chunk_55 = makeLoad(() => {
    const src = fetch(new URL("./chunk-55-624cd8689ab5b619.wasm", import.meta.url), { integrity: "sha256-YkzYaJq1thnRrOPnhKeqEKWcwopitUfqiatHyFiLXUc=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, teaching, write */
const __chunk_56 = makeLoad(() => {
    const src = fetch(new URL("./chunk-56-4c8cda796a2fed9e.wasm", import.meta.url), { integrity: "sha256-TIzaeWov7Z5jDiPW9fVfwDHz2F8bAAZBQSCeQH+nvNI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, chairside, write */
const __chunk_57 = makeLoad(() => {
    const src = fetch(new URL("./chunk-57-49fd310a26a1c23e.wasm", import.meta.url), { integrity: "sha256-Sf0xCiahwj5VkdDiPG73v5Z+FWYpFORSv+/rfSENDpI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class */
const __chunk_58 = makeLoad(() => {
    const src = fetch(new URL("./chunk-58-1e49d8ae04f280fa.wasm", import.meta.url), { integrity: "sha256-HknYrgTygPpxW+ksBg3jPYVWtbeoAWVHZn1hehpGoIQ=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, packed_book, record, write */
const __chunk_59 = makeLoad(() => {
    const src = fetch(new URL("./chunk-59-1b960fdc5322b875.wasm", import.meta.url), { integrity: "sha256-G5YP3FMiuHUcUdN7pSVQ69pDMq9FIYi31gVzfZCRNMI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, packed_book, study, teaching, write */
const __chunk_60 = makeLoad(() => {
    const src = fetch(new URL("./chunk-60-e65b12ac129b5d8d.wasm", import.meta.url), { integrity: "sha256-5lsSrBKbXY3krSJqbnpQ0jDqW1C8e+4c2PkCTwpnxTM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, packed_book, write */
const __chunk_61 = makeLoad(() => {
    const src = fetch(new URL("./chunk-61-22e13b9e72a9a5fa.wasm", import.meta.url), { integrity: "sha256-IuE7nnKppfqSacBYlY1Tbc3fdUUGA1naxMtQ7vQOtAY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, record, teaching, write */
const __chunk_62 = makeLoad(() => {
    const src = fetch(new URL("./chunk-62-2a1cdf12eae32f54.wasm", import.meta.url), { integrity: "sha256-KhzfEurjL1S7tsmW96SvCN0lSQTyWDthPYLGMfieW5I=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, study */
const __chunk_63 = makeLoad(() => {
    const src = fetch(new URL("./chunk-63-120bb3079ca2a460.wasm", import.meta.url), { integrity: "sha256-EguzB5yipGC2HH3n3GsUrds6TKuy/UkG7smck9FWMN4=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, study, teaching */
const __chunk_64 = makeLoad(() => {
    const src = fetch(new URL("./chunk-64-5b619f77768f1ad0.wasm", import.meta.url), { integrity: "sha256-W2Gfd3aPGtC12hp0YOdO1pLxQUp7te5lbz+dmb3THOM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, study, teaching, write */
const __chunk_65 = makeLoad(() => {
    const src = fetch(new URL("./chunk-65-5781fee1f7206606.wasm", import.meta.url), { integrity: "sha256-V4H+4fcgZgY2e2/5AV1gDxiLH2Bia6QStmeVnHsMFP4=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, study, write */
const __chunk_66 = makeLoad(() => {
    const src = fetch(new URL("./chunk-66-abb5ba2f6484ac1a.wasm", import.meta.url), { integrity: "sha256-q7W6L2SErBpYoqIFMBmeoOqzzGTKqfbXpDQz1//9iP0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, teaching */
const __chunk_67 = makeLoad(() => {
    const src = fetch(new URL("./chunk-67-99f50f6088a4b489.wasm", import.meta.url), { integrity: "sha256-mfUPYIiktIns/Af9bWmO99L8KYH2DatWAKfNaRP83/A=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, teaching, write */
const __chunk_68 = makeLoad(() => {
    const src = fetch(new URL("./chunk-68-4f8d01d5e49bb8e4.wasm", import.meta.url), { integrity: "sha256-T40B1eSbuORr671x001jQXDZKyItJTSlt9mtCsHDhqM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, class, write */
const __chunk_69 = makeLoad(() => {
    const src = fetch(new URL("./chunk-69-8f639bebdf04d205.wasm", import.meta.url), { integrity: "sha256-j2Ob698E0gW94DYV2ZNzVxKMp4lYS/QqRjj7KyOSMxU=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, packed_book */
const __chunk_70 = makeLoad(() => {
    const src = fetch(new URL("./chunk-70-d5e3218b3ce2c9ef.wasm", import.meta.url), { integrity: "sha256-1eMhizziye+lMzr1bPBcxCmtCdk80oF2MDldOhKw6Ss=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, packed_book, study, teaching, write */
const __chunk_71 = makeLoad(() => {
    const src = fetch(new URL("./chunk-71-6c0423aa2d115b14.wasm", import.meta.url), { integrity: "sha256-bAQjqi0RWxR2S88n4owWRsdOCv48BchVt/j99HS2vyk=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, packed_book, study, write */
const __chunk_72 = makeLoad(() => {
    const src = fetch(new URL("./chunk-72-3b3010518e1bc3f6.wasm", import.meta.url), { integrity: "sha256-OzAQUY4bw/bckbBlrbjx+w9gKAcmEPcnnzsHMizUMLA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, packed_book, write */
const __chunk_73 = makeLoad(() => {
    const src = fetch(new URL("./chunk-73-c5db705b891b4a05.wasm", import.meta.url), { integrity: "sha256-xdtwW4kbSgXEzBKu0JM2FO1hFC/a+yPVWPVIMGVtmvE=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, record */
const __chunk_74 = makeLoad(() => {
    const src = fetch(new URL("./chunk-74-de4f88dfc0c803d5.wasm", import.meta.url), { integrity: "sha256-3k+I38DIA9Ultn2kX/CohtKB1GT8+B33d7ngVs3iqxc=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, record, study */
const __chunk_75 = makeLoad(() => {
    const src = fetch(new URL("./chunk-75-e4bce90f844dc74e.wasm", import.meta.url), { integrity: "sha256-5LzpD4RNx048Vd78dypMRk80MO8+3HTX0JX1WSa8jsU=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, record, teaching */
const __chunk_76 = makeLoad(() => {
    const src = fetch(new URL("./chunk-76-23b08c7c6a38ce57.wasm", import.meta.url), { integrity: "sha256-I7CMfGo4zlfjT8w7+VZ5vhRzzGzDffakI9w4axRJqK8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, study */
const __chunk_77 = makeLoad(() => {
    const src = fetch(new URL("./chunk-77-625772e428182d20.wasm", import.meta.url), { integrity: "sha256-Yldy5CgYLSAIaoZyYHJTPOROeYE+1RIb0b/6cSRccn4=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, study, teaching */
const __chunk_78 = makeLoad(() => {
    const src = fetch(new URL("./chunk-78-4526ed52562bde17.wasm", import.meta.url), { integrity: "sha256-RSbtUlYr3hdORKPLctGNJnWOEKXcBT8ntJuAT/WBKuI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, study, teaching, write */
const __chunk_79 = makeLoad(() => {
    const src = fetch(new URL("./chunk-79-958651ea9bd2a63b.wasm", import.meta.url), { integrity: "sha256-lYZR6pvSpjsUak5gx99+79xthGDa4HqZJ038kS2zJpY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, study, write */
const __chunk_80 = makeLoad(() => {
    const src = fetch(new URL("./chunk-80-eae61cdfd7160f12.wasm", import.meta.url), { integrity: "sha256-6uYc39cWDxI7rHrsufzx1SUCLZInxXOpJj7BBQPMMNU=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, teaching */
const __chunk_81 = makeLoad(() => {
    const src = fetch(new URL("./chunk-81-ee14ee5034a2cc22.wasm", import.meta.url), { integrity: "sha256-7hTuUDSizCIABpm/A6LO7/FKGfXi/rSUTtaU896y9iY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, teaching, write */
const __chunk_82 = makeLoad(() => {
    const src = fetch(new URL("./chunk-82-dcf6616f283e7ec4.wasm", import.meta.url), { integrity: "sha256-3PZhbyg+fsQuI5sj235Uaas0RfC0FE0psAcuSvqtRUg=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* bench, write */
const __chunk_83 = makeLoad(() => {
    const src = fetch(new URL("./chunk-83-42083248cf51e420.wasm", import.meta.url), { integrity: "sha256-QggySM9R5CCokHcnQ4J/ZpXDZ1ikjNanbE9CCvGorVc=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, class, packed_book */
const __chunk_84 = makeLoad(() => {
    const src = fetch(new URL("./chunk-84-842eef617141fa1f.wasm", import.meta.url), { integrity: "sha256-hC7vYXFB+h/3cgtW6urMj1GgKgn8Kc0QI6+ajlx6zs0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, class, packed_book, record, study, teaching */
const __chunk_85 = makeLoad(() => {
    const src = fetch(new URL("./chunk-85-9b5abf14ab1af419.wasm", import.meta.url), { integrity: "sha256-m1q/FKsa9BneXmKUCYU7kAQS3BNvpL/VenhOa8piIco=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, class, packed_book, study */
const __chunk_86 = makeLoad(() => {
    const src = fetch(new URL("./chunk-86-16a44ebed722c9bb.wasm", import.meta.url), { integrity: "sha256-FqROvtciybu1nNweb/vBshw9KWccbLOW5m1U9shnEVY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, class, packed_book, study, teaching */
const __chunk_87 = makeLoad(() => {
    const src = fetch(new URL("./chunk-87-7a07cbdca7e53adc.wasm", import.meta.url), { integrity: "sha256-egfL3KflOtziXFKc4mFr85WskicW8T3NsZ0f3E/RzkI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, class, packed_book, study, teaching, write */
const __chunk_88 = makeLoad(() => {
    const src = fetch(new URL("./chunk-88-39ff27750cb1772a.wasm", import.meta.url), { integrity: "sha256-Of8ndQyxdyrrmXzH0UV+fUEGF6/fRgp/wKO24+NbTk4=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, class, packed_book, study, write */
const __chunk_89 = makeLoad(() => {
    const src = fetch(new URL("./chunk-89-ea282e94d1b70696.wasm", import.meta.url), { integrity: "sha256-6igulNG3BpYhgDLHV71lGJjjjGKlVUcSqwln5Ybq4Ao=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, class, packed_book, teaching */
const __chunk_90 = makeLoad(() => {
    const src = fetch(new URL("./chunk-90-08983464c259c80a.wasm", import.meta.url), { integrity: "sha256-CJg0ZMJZyAp5SMFFvkk/2Don0rXbsBtDJ++NiwJB0XA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, class, packed_book, teaching, write */
const __chunk_91 = makeLoad(() => {
    const src = fetch(new URL("./chunk-91-2e93b88920f285d8.wasm", import.meta.url), { integrity: "sha256-LpO4iSDyhdgSoPwMdslWQnkDkAJ3Uk8du5MB8XIUNm4=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, class, packed_book, write */
const __chunk_92 = makeLoad(() => {
    const src = fetch(new URL("./chunk-92-19e7710b32c310ad.wasm", import.meta.url), { integrity: "sha256-GedxCzLDEK03sxbIZcnK/0IFicm/a/chpJAS0qGVWD0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, packed_book */
const __chunk_93 = makeLoad(() => {
    const src = fetch(new URL("./chunk-93-18f2bcefd5d7a841.wasm", import.meta.url), { integrity: "sha256-GPK879XXqEHUCGL/HhoEdYLrHSWzulPRyxYXfb6AW+0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, packed_book, record, teaching */
const __chunk_94 = makeLoad(() => {
    const src = fetch(new URL("./chunk-94-b66ac0b1ace640e8.wasm", import.meta.url), { integrity: "sha256-tmrAsazmQOhGXDUhMiI92z4gZb6e7ZS/BJsJSBD8jBU=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, packed_book, teaching */
const __chunk_95 = makeLoad(() => {
    const src = fetch(new URL("./chunk-95-da2809530440777a.wasm", import.meta.url), { integrity: "sha256-2igJUwRAd3pYZjriensqN1Eeel4YHA5lsB7iEPbd+fA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, packed_book, teaching, write */
const __chunk_96 = makeLoad(() => {
    const src = fetch(new URL("./chunk-96-1f2144f3a31d7fd1.wasm", import.meta.url), { integrity: "sha256-HyFE86Mdf9FH4Jcf2V6MKIrdbRvsOoYGfyBcmrCdl7M=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, chairside, packed_book, write */
const __chunk_97 = makeLoad(() => {
    const src = fetch(new URL("./chunk-97-3500cf38c3d0b02b.wasm", import.meta.url), { integrity: "sha256-NQDPOMPQsCuzygbtfyDCI5seSwG7iSTKKfOYIbhUnVE=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, class, packed_book, study, teaching, write */
const __chunk_98 = makeLoad(() => {
    const src = fetch(new URL("./chunk-98-c3b60628380be67b.wasm", import.meta.url), { integrity: "sha256-w7YGKDgL5ntacmMpj0E1hCs4GXD+4G+am9LcXvXU0bI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, class, packed_book, write */
const __chunk_99 = makeLoad(() => {
    const src = fetch(new URL("./chunk-99-143b74c39f55c913.wasm", import.meta.url), { integrity: "sha256-FDt0w59VyROz9doaBZoAML/wVgKwnsOCECguPtA6UIc=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, packed_book */
const __chunk_100 = makeLoad(() => {
    const src = fetch(new URL("./chunk-100-498b51fa788a2456.wasm", import.meta.url), { integrity: "sha256-SYtR+niKJFZhwjKtmwqL5hAcWSL4A69eqKsQvjQcInM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, packed_book, study, write */
const __chunk_101 = makeLoad(() => {
    const src = fetch(new URL("./chunk-101-12e8b85e764c1212.wasm", import.meta.url), { integrity: "sha256-Eui4XnZMEhI7+KliBsHULWuks4Z+fSXa7pGwCnjV3wg=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, packed_book, teaching, write */
const __chunk_102 = makeLoad(() => {
    const src = fetch(new URL("./chunk-102-d6e0f6c09457563c.wasm", import.meta.url), { integrity: "sha256-1uD2wJRXVjxQx6NMBqo/tFw5LzMqv4W2lV4BHj8UKik=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* book, packed_book, write */
const __chunk_103 = makeLoad(() => {
    const src = fetch(new URL("./chunk-103-b27cfc0733b63cc9.wasm", import.meta.url), { integrity: "sha256-snz8BzO2PMnYBTs8TTkUCkcbMB8W4YF4j2T0nvXPcao=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class */
const __chunk_104 = makeLoad(() => {
    const src = fetch(new URL("./chunk-104-4fb570f59390fa3a.wasm", import.meta.url), { integrity: "sha256-T7Vw9ZOQ+jr8RnRDGMQYIlgK+m9Kg7ImMMtOPONyXaM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, packed_book */
const __chunk_105 = makeLoad(() => {
    const src = fetch(new URL("./chunk-105-852b415332161dc6.wasm", import.meta.url), { integrity: "sha256-hStBUzIWHcYHCyXvWnOL+N8DpydEwLCmsgG0NFWlqeo=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, packed_book, record, teaching, write */
const __chunk_106 = makeLoad(() => {
    const src = fetch(new URL("./chunk-106-899fae554004fdf1.wasm", import.meta.url), { integrity: "sha256-iZ+uVUAE/fFL75C4w3bXWUOfGoB0YYZetub27KDzqOA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, packed_book, study, teaching, write */
const __chunk_107 = makeLoad(() => {
    const src = fetch(new URL("./chunk-107-fa29e1a3b75585e9.wasm", import.meta.url), { integrity: "sha256-+inho7dVhenvu4XqO8J1VlBQcKNgxFr63Bhi15FA9/Y=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, packed_book, study, write */
const __chunk_108 = makeLoad(() => {
    const src = fetch(new URL("./chunk-108-e668a6cf5c15ddea.wasm", import.meta.url), { integrity: "sha256-5mimz1wV3eruQORt4606HbHvUn1T12Gn8Y+qHAW7jNM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, packed_book, teaching, write */
const __chunk_109 = makeLoad(() => {
    const src = fetch(new URL("./chunk-109-231d52f43a114422.wasm", import.meta.url), { integrity: "sha256-Ix1S9DoRRCIXmBmI4N8CXL4S6aq22f+S6LDv786nHOk=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, packed_book, write */
const __chunk_110 = makeLoad(() => {
    const src = fetch(new URL("./chunk-110-2118e1068f55ea15.wasm", import.meta.url), { integrity: "sha256-IRjhBo9V6hWjeF8FaJuiOQAEi5gpsRs9j+WbCjqHwCE=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, record */
const __chunk_111 = makeLoad(() => {
    const src = fetch(new URL("./chunk-111-06d31ba1ccdc977c.wasm", import.meta.url), { integrity: "sha256-BtMboczcl3xb0uh2vgC/3TNWgJffe9L9r4Hc4/6IitY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, record, study */
const __chunk_112 = makeLoad(() => {
    const src = fetch(new URL("./chunk-112-ea38fe945f845803.wasm", import.meta.url), { integrity: "sha256-6jj+lF+EWAOBrhfmtCv3ci0DTxA6X+jBPAMGj7m99NI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, record, study, teaching */
const __chunk_113 = makeLoad(() => {
    const src = fetch(new URL("./chunk-113-3fcf2258b51efbee.wasm", import.meta.url), { integrity: "sha256-P88iWLUe++6Bt+GzcMWnWJGMC2MbZVpIT3OsXa4F6wU=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, record, study, teaching, write */
const __chunk_114 = makeLoad(() => {
    const src = fetch(new URL("./chunk-114-47ef223fede05add.wasm", import.meta.url), { integrity: "sha256-R+8iP+3gWt2KS/Qzu1+WdoBxPOiWe2AxusU6V9s6RGQ=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, record, study, write */
const __chunk_115 = makeLoad(() => {
    const src = fetch(new URL("./chunk-115-63775744357ed819.wasm", import.meta.url), { integrity: "sha256-Y3dXRDV+2BnPm2sQfEqfbmNwTpvrZhuaAFLtasv5Ytw=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, record, teaching */
const __chunk_116 = makeLoad(() => {
    const src = fetch(new URL("./chunk-116-23102140da523495.wasm", import.meta.url), { integrity: "sha256-IxAhQNpSNJVgY4MkeBRALC6ZXh0MoR5N9bYqtn0dUZI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, record, teaching, write */
const __chunk_117 = makeLoad(() => {
    const src = fetch(new URL("./chunk-117-d17f227ea9d448fa.wasm", import.meta.url), { integrity: "sha256-0X8ifqnUSPqltSh8eLJmjkGI9f4vSwMSvlex4W+W4vY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, record, write */
const __chunk_118 = makeLoad(() => {
    const src = fetch(new URL("./chunk-118-f4c937df8440ef2f.wasm", import.meta.url), { integrity: "sha256-9Mk334RA7y/N3ESKOBZSMrnirpoMciHWD5YQxgBBLdY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, study */
const __chunk_119 = makeLoad(() => {
    const src = fetch(new URL("./chunk-119-625f7bf311fa14b6.wasm", import.meta.url), { integrity: "sha256-Yl978xH6FLYD/bS71bC76AOZPOuyP0Lf4IcIavLzgUY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, study, teaching */
const __chunk_120 = makeLoad(() => {
    const src = fetch(new URL("./chunk-120-ce42d2c1f23e98e8.wasm", import.meta.url), { integrity: "sha256-zkLSwfI+mOid8ql0FzsrL4mVHwa4zGGnvfU5MIZZWx8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, study, teaching, write */
const __chunk_121 = makeLoad(() => {
    const src = fetch(new URL("./chunk-121-58043b4af07b8882.wasm", import.meta.url), { integrity: "sha256-WAQ7SvB7iILLO6XNZ6NNwpZIo4yNCcdzq+7BhVxjomE=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, study, write */
const __chunk_122 = makeLoad(() => {
    const src = fetch(new URL("./chunk-122-46d53dda132ec7e7.wasm", import.meta.url), { integrity: "sha256-RtU92hMux+eGKnHzZhKILo1W16XEEcqvVI0LZULeBlw=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, teaching */
const __chunk_123 = makeLoad(() => {
    const src = fetch(new URL("./chunk-123-5cf04c114f09c4dc.wasm", import.meta.url), { integrity: "sha256-XPBMEU8JxNwh+9lMI9dlderDnCLaAbf1dbM2rdCHld4=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, teaching, write */
const __chunk_124 = makeLoad(() => {
    const src = fetch(new URL("./chunk-124-ebe754d64f2400ad.wasm", import.meta.url), { integrity: "sha256-6+dU1k8kAK0J7CkHyNSDgpUYSM5PsD6Yvo4qzXhQP+0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, class, write */
const __chunk_125 = makeLoad(() => {
    const src = fetch(new URL("./chunk-125-9da79f03b30b2726.wasm", import.meta.url), { integrity: "sha256-naefA7MLJyb7PYc7mrudRa34OBppYcckqiL291KeCzc=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, packed_book, study, write */
const __chunk_126 = makeLoad(() => {
    const src = fetch(new URL("./chunk-126-c62a36a5db0b5c3b.wasm", import.meta.url), { integrity: "sha256-xio2pdsLXDtsfHgaSGMSHfat6oUmcMKdUA6bDhnOx8A=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, packed_book, teaching, write */
const __chunk_127 = makeLoad(() => {
    const src = fetch(new URL("./chunk-127-b23df97dc6b37224.wasm", import.meta.url), { integrity: "sha256-sj35fcazciT6LedgntuddnafRtjdMjYyI4ir5UTFcUI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, packed_book, write */
const __chunk_128 = makeLoad(() => {
    const src = fetch(new URL("./chunk-128-e15c52afafa8fe6a.wasm", import.meta.url), { integrity: "sha256-4VxSr6+o/mq0RxnWqmmTsu1pYq1NDgQaf/JT2DhjqF0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, record */
const __chunk_129 = makeLoad(() => {
    const src = fetch(new URL("./chunk-129-45b88a43bffb8f19.wasm", import.meta.url), { integrity: "sha256-RbiKQ7/7jxmf6IdqBmzC7Ge4eFj5nS0pDjAsLmm3me0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, record, study */
const __chunk_130 = makeLoad(() => {
    const src = fetch(new URL("./chunk-130-496b60de86d5a303.wasm", import.meta.url), { integrity: "sha256-SWtg3obVowNuFTNlkxrFz+tyWcHbq3NVGLvTJdZYQg0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, record, study, teaching */
const __chunk_131 = makeLoad(() => {
    const src = fetch(new URL("./chunk-131-b8e549aed356820e.wasm", import.meta.url), { integrity: "sha256-uOVJrtNWgg5v6Guw9WEg+dADrrP1DZzkij5XiDB5e5Y=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, record, teaching */
const __chunk_132 = makeLoad(() => {
    const src = fetch(new URL("./chunk-132-a58f8e1288d57bb5.wasm", import.meta.url), { integrity: "sha256-pY+OEojVe7UNOE+UrCKZJwhrNHIUX7lQCtRbF7SBVyA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, record, teaching, write */
const __chunk_133 = makeLoad(() => {
    const src = fetch(new URL("./chunk-133-e720aa07e61075a4.wasm", import.meta.url), { integrity: "sha256-5yCqB+YQdaQKHXapur8GCeGY0fjfFMJurgpPN67vtSg=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, study */
const __chunk_134 = makeLoad(() => {
    const src = fetch(new URL("./chunk-134-a4dc2eecd0ba3fbf.wasm", import.meta.url), { integrity: "sha256-pNwu7NC6P79IaD+4vaZ3KBkiIXQYLw8I79hByFbrqpk=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, study, teaching */
const __chunk_135 = makeLoad(() => {
    const src = fetch(new URL("./chunk-135-a7f7953de8607d03.wasm", import.meta.url), { integrity: "sha256-p/eVPehgfQPx8dbjm1Ct/gJTUYQwIOyeAm6riPXD4WA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, study, teaching, write */
const __chunk_136 = makeLoad(() => {
    const src = fetch(new URL("./chunk-136-6be9fd5c520c7403.wasm", import.meta.url), { integrity: "sha256-a+n9XFIMdAOcDeWnC5UKvqUYg9o61xYy+9w7kXbqL8Q=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, study, write */
const __chunk_137 = makeLoad(() => {
    const src = fetch(new URL("./chunk-137-034825e644edea11.wasm", import.meta.url), { integrity: "sha256-A0gl5kTt6hFItXTfdTxf3kAx0EBehtM73oWEtV7DKtY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, teaching */
const __chunk_138 = makeLoad(() => {
    const src = fetch(new URL("./chunk-138-44e472e6104eee96.wasm", import.meta.url), { integrity: "sha256-RORy5hBO7pad24lkJRcD9g4buXl+pagxBsdBrsWQpqA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, teaching, write */
const __chunk_139 = makeLoad(() => {
    const src = fetch(new URL("./chunk-139-c2c5e556aeed3b5f.wasm", import.meta.url), { integrity: "sha256-wsXlVq7tO18zsz67GEgRGW4kAC/f7PHGQOOQXMDxHmM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* chairside, write */
const __chunk_140 = makeLoad(() => {
    const src = fetch(new URL("./chunk-140-029e18b13d9f4b43.wasm", import.meta.url), { integrity: "sha256-Ap4YsT2fS0M3oGUNwGRAhQ85WKxT3CBXiAA2IXkRr+w=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, packed_book */
const __chunk_141 = makeLoad(() => {
    const src = fetch(new URL("./chunk-141-691f23f01da71862.wasm", import.meta.url), { integrity: "sha256-aR8j8B2nGGJkYa8dZswD/HT2IxgTe4qL0CmlBbTsqeY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, packed_book, study */
const __chunk_142 = makeLoad(() => {
    const src = fetch(new URL("./chunk-142-0c13d9e8a4651217.wasm", import.meta.url), { integrity: "sha256-DBPZ6KRlEhd5CdyFMKzS39PBDv7nGZFmI3ppfhAO9LQ=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, packed_book, study, teaching, write */
const __chunk_143 = makeLoad(() => {
    const src = fetch(new URL("./chunk-143-9b7e278a28ee7a25.wasm", import.meta.url), { integrity: "sha256-m34niijueiWbWlycb5G+WNLWl8qD01hWqXtk/UIu7dE=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, packed_book, study, write */
const __chunk_144 = makeLoad(() => {
    const src = fetch(new URL("./chunk-144-7b2b797f829e3160.wasm", import.meta.url), { integrity: "sha256-eyt5f4KeMWA93OHr/JtNJwcCbGZ28aPqXXkTl1peUm4=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, packed_book, write */
const __chunk_146 = makeLoad(() => {
    const src = fetch(new URL("./chunk-146-b92efeb139182c0a.wasm", import.meta.url), { integrity: "sha256-uS7+sTkYLAoZlRTfycryxBmZXcf1tAdhOCgBPnOr4WU=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, record */
const __chunk_147 = makeLoad(() => {
    const src = fetch(new URL("./chunk-147-6768d433e07489ca.wasm", import.meta.url), { integrity: "sha256-Z2jUM+B0icqi/TpEWGJ3ejaAcMCa5LOLTAjQ/wXf0YM=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, record, study */
const __chunk_148 = makeLoad(() => {
    const src = fetch(new URL("./chunk-148-a283ded550a64524.wasm", import.meta.url), { integrity: "sha256-ooPe1VCmRSQHtWRqMc5AXOct3n/gzVSHpNBiwfYKhDI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, record, study, teaching */
const __chunk_149 = makeLoad(() => {
    const src = fetch(new URL("./chunk-149-75c0a57aef249242.wasm", import.meta.url), { integrity: "sha256-dcCleu8kkkLxY3lEhliYPPJMwG51cjgdh7L+7SXXcwQ=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, record, study, teaching, write */
const __chunk_150 = makeLoad(() => {
    const src = fetch(new URL("./chunk-150-3674aec901ba03b3.wasm", import.meta.url), { integrity: "sha256-NnSuyQG6A7MiaUbEzx9SB569ZYSPLPkQdd7MkFO+eGY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, record, study, write */
const __chunk_151 = makeLoad(() => {
    const src = fetch(new URL("./chunk-151-d9a874c9b891b2ac.wasm", import.meta.url), { integrity: "sha256-2ah0ybiRsqwjDi8oYZgsrlg+x3i0yFoTxYeH8L54z0Y=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, record, teaching */
const __chunk_152 = makeLoad(() => {
    const src = fetch(new URL("./chunk-152-c5e2a786327db70a.wasm", import.meta.url), { integrity: "sha256-xeKnhjJ9two8dKYRCcm5R+gzAbbYcSsdIH7iGsuHnX8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, record, teaching, write */
const __chunk_153 = makeLoad(() => {
    const src = fetch(new URL("./chunk-153-d36db5f28a8f06a5.wasm", import.meta.url), { integrity: "sha256-02218oqPBqXm5tvmJjyg6Ut1MlniQEx9efxaDtlTv6k=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, record, write */
const __chunk_154 = makeLoad(() => {
    const src = fetch(new URL("./chunk-154-96ab3d249f6a9a83.wasm", import.meta.url), { integrity: "sha256-lqs9JJ9qmoM+iJSz6QQPv6mlbc3WXRgctcwK0em8E+8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, study */
const __chunk_155 = makeLoad(() => {
    const src = fetch(new URL("./chunk-155-cd08676381cd6f53.wasm", import.meta.url), { integrity: "sha256-zQhnY4HNb1ND9L5/keTBbXaVK8UogX1Ou0Lj3hW1x8E=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, study, teaching */
const __chunk_156 = makeLoad(() => {
    const src = fetch(new URL("./chunk-156-00c595084da79718.wasm", import.meta.url), { integrity: "sha256-AMWVCE2nlxhnOhXtCeyUdzTTZotdxFnfQZd24mZr24Y=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, study, teaching, write */
const __chunk_157 = makeLoad(() => {
    const src = fetch(new URL("./chunk-157-91b41e340a139abd.wasm", import.meta.url), { integrity: "sha256-kbQeNAoTmr2Q18UxzVQ9AcNdHBqzzZxv0uus8x4f5So=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, study, write */
const __chunk_158 = makeLoad(() => {
    const src = fetch(new URL("./chunk-158-8b0020001a1fd21d.wasm", import.meta.url), { integrity: "sha256-iwAgABof0h3lNKvvYK2W8OyAmRaJ7VgPbe9Jka8MSi0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, teaching */
const __chunk_159 = makeLoad(() => {
    const src = fetch(new URL("./chunk-159-376b2aa7c5a2e787.wasm", import.meta.url), { integrity: "sha256-N2sqp8Wi54d5XGXY9Q1IYTtXkWu1SYzHWDV5ldwRwAs=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, teaching, write */
const __chunk_160 = makeLoad(() => {
    const src = fetch(new URL("./chunk-160-f4c1748c73cca26f.wasm", import.meta.url), { integrity: "sha256-9MF0jHPMom+FVn9x/NUmjBzQHZ2vbMtGDuU7xM4p1m0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* class, write */
const __chunk_161 = makeLoad(() => {
    const src = fetch(new URL("./chunk-161-0e9b697a62fc3f44.wasm", import.meta.url), { integrity: "sha256-DptpemL8P0RxLRXgyQ5tvqQc+vxkGeyiDyhkdZMw5pA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* packed_book, study, teaching, write */
const __chunk_162 = makeLoad(() => {
    const src = fetch(new URL("./chunk-162-b19c467cc68e5274.wasm", import.meta.url), { integrity: "sha256-sZxGfMaOUnRZs6XzGZW25dI4vjAqn0D+jARjWdKG3aE=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* packed_book, study, write */
const __chunk_163 = makeLoad(() => {
    const src = fetch(new URL("./chunk-163-76d09c4cffa760ca.wasm", import.meta.url), { integrity: "sha256-dtCcTP+nYMpjIqHzexr586iijSaND2hjskp+Ppn6Fpk=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* packed_book, teaching */
const __chunk_164 = makeLoad(() => {
    const src = fetch(new URL("./chunk-164-072315b39563dbe0.wasm", import.meta.url), { integrity: "sha256-ByMVs5Vj2+Ace2X1Ts4BNdknBblij0GqR3WpSD7ufnE=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* packed_book, teaching, write */
const __chunk_165 = makeLoad(() => {
    const src = fetch(new URL("./chunk-165-cd415a05ada583c0.wasm", import.meta.url), { integrity: "sha256-zUFaBa2lg8CxCpkFG13xhOuctZLa+fMfvJ4DApuz+sY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* packed_book, write */
const __chunk_166 = makeLoad(() => {
    const src = fetch(new URL("./chunk-166-24af598d432997f1.wasm", import.meta.url), { integrity: "sha256-JK9ZjUMpl/GQbKxl6ML2nzq7oClh8mHhaiI57gV2STw=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* record, study */
const __chunk_167 = makeLoad(() => {
    const src = fetch(new URL("./chunk-167-6fc810d0eec93f09.wasm", import.meta.url), { integrity: "sha256-b8gQ0O7JPwlPwjiLmdU4U8hG1TfCdtvjQtrNgIojLrY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* record, study, teaching */
const __chunk_168 = makeLoad(() => {
    const src = fetch(new URL("./chunk-168-6067ae4bc1c4303b.wasm", import.meta.url), { integrity: "sha256-YGeuS8HEMDus+3z1Bi5qeISe6drQgGQtCje3SD9RinI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* record, study, teaching, write */
const __chunk_169 = makeLoad(() => {
    const src = fetch(new URL("./chunk-169-0e59eca86686cd3a.wasm", import.meta.url), { integrity: "sha256-DlnsqGaGzTqOXT52IEXC6VhENUQcmJuRglExuZ20Pu0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* record, study, write */
const __chunk_170 = makeLoad(() => {
    const src = fetch(new URL("./chunk-170-e58d3c63a423109f.wasm", import.meta.url), { integrity: "sha256-5Y08Y6QjEJ/eRfS91HV2pC7TJOyrRRjdJz8/7Wyuh0k=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* record, teaching */
const __chunk_171 = makeLoad(() => {
    const src = fetch(new URL("./chunk-171-1d4c80ea50f9c7ca.wasm", import.meta.url), { integrity: "sha256-HUyA6lD5x8owWtQ+xeeV/AhLWaKYgtrtxbRMNQeSzOc=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* record, teaching, write */
const __chunk_172 = makeLoad(() => {
    const src = fetch(new URL("./chunk-172-df708b73f5906760.wasm", import.meta.url), { integrity: "sha256-33CLc/WQZ2AFpCwomhb/blfXYk/yGnpT+9Nea4cpQI8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* record, write */
const __chunk_173 = makeLoad(() => {
    const src = fetch(new URL("./chunk-173-c18e4414571f18e7.wasm", import.meta.url), { integrity: "sha256-wY5EFFcfGOea4fGlwkjGduiJPWt8H4BT+kn413rehsA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* study, teaching */
const __chunk_174 = makeLoad(() => {
    const src = fetch(new URL("./chunk-174-8e400ab0ce54e0ed.wasm", import.meta.url), { integrity: "sha256-jkAKsM5U4O32lNnZ7QGRQ8BIF4Prjl0T6fIrHdi+Gkk=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* study, teaching, write */
const __chunk_175 = makeLoad(() => {
    const src = fetch(new URL("./chunk-175-3020f47386f42dad.wasm", import.meta.url), { integrity: "sha256-MCD0c4b0La3CI96S/NJrdaMtgZaKrSGs41c0OH19PXA=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* study, write */
const __chunk_176 = makeLoad(() => {
    const src = fetch(new URL("./chunk-176-9ee8bbd0ad67c4d5.wasm", import.meta.url), { integrity: "sha256-nui70K1nxNXgcmU9wsl5ebbuJX9dHfOmC6R8v9Vz8Ik=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
/* teaching, write */
const __chunk_177 = makeLoad(() => {
    const src = fetch(new URL("./chunk-177-ed9532fa630595ed.wasm", import.meta.url), { integrity: "sha256-7ZUy+mMFle0GkUpDibvHbAHXX4eFKQkdr02QlHL23Us=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, []);
export const __wasm_split_load_write = wrapAsyncCb(makeLoad(() => {
    const src = fetch(new URL("./split-write-d78ee94d183b7137.wasm", import.meta.url), { integrity: "sha256-147pTRg7cTdOTMsFRSB+Bu+v4wNSQA7n7Y78OGkl4DY=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, [__chunk_12, __chunk_13, __chunk_16, __chunk_17, __chunk_18, __chunk_19, __chunk_22, __chunk_24, __chunk_25, __chunk_28, __chunk_29, __chunk_30, __chunk_31, __chunk_32, __chunk_35, __chunk_36, __chunk_37, __chunk_40, __chunk_41, __chunk_43, __chunk_44, __chunk_45, __chunk_49, __chunk_50, __chunk_53, __chunk_54, __chunk_56, __chunk_57, __chunk_59, __chunk_60, __chunk_61, __chunk_62, __chunk_65, __chunk_66, __chunk_68, __chunk_69, __chunk_71, __chunk_72, __chunk_73, __chunk_79, __chunk_80, __chunk_82, __chunk_83, __chunk_88, __chunk_89, __chunk_91, __chunk_92, __chunk_96, __chunk_97, __chunk_98, __chunk_99, __chunk_101, __chunk_102, __chunk_103, __chunk_106, __chunk_107, __chunk_108, __chunk_109, __chunk_110, __chunk_114, __chunk_115, __chunk_117, __chunk_118, __chunk_121, __chunk_122, __chunk_124, __chunk_125, __chunk_126, __chunk_127, __chunk_128, __chunk_133, __chunk_136, __chunk_137, __chunk_139, __chunk_140, __chunk_143, __chunk_144, __chunk_146, __chunk_150, __chunk_151, __chunk_153, __chunk_154, __chunk_157, __chunk_158, __chunk_160, __chunk_161, __chunk_162, __chunk_163, __chunk_165, __chunk_166, __chunk_169, __chunk_170, __chunk_172, __chunk_173, __chunk_175, __chunk_176, __chunk_177]));
export const __wasm_split_load_teaching = wrapAsyncCb(makeLoad(() => {
    const src = fetch(new URL("./split-teaching-abf2b148b9fed74d.wasm", import.meta.url), { integrity: "sha256-q/KxSLn+100oum0QQwzTqfNK/l0AqDReAEmZb+zeBwI=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, [__chunk_11, __chunk_12, __chunk_13, __chunk_15, __chunk_16, __chunk_19, __chunk_20, __chunk_28, __chunk_29, __chunk_31, __chunk_34, __chunk_35, __chunk_37, __chunk_39, __chunk_40, __chunk_42, __chunk_43, __chunk_45, __chunk_48, __chunk_49, __chunk_50, __chunk_52, __chunk_53, __chunk_55, __chunk_56, __chunk_60, __chunk_62, __chunk_64, __chunk_65, __chunk_67, __chunk_68, __chunk_71, __chunk_76, __chunk_78, __chunk_79, __chunk_81, __chunk_82, __chunk_85, __chunk_87, __chunk_88, __chunk_90, __chunk_91, __chunk_94, __chunk_95, __chunk_96, __chunk_98, __chunk_102, __chunk_106, __chunk_107, __chunk_109, __chunk_113, __chunk_114, __chunk_116, __chunk_117, __chunk_120, __chunk_121, __chunk_123, __chunk_124, __chunk_127, __chunk_131, __chunk_132, __chunk_133, __chunk_135, __chunk_136, __chunk_138, __chunk_139, __chunk_143, __chunk_149, __chunk_150, __chunk_152, __chunk_153, __chunk_156, __chunk_157, __chunk_159, __chunk_160, __chunk_162, __chunk_164, __chunk_165, __chunk_168, __chunk_169, __chunk_171, __chunk_172, __chunk_174, __chunk_175, __chunk_177]));
export const __wasm_split_load_study = wrapAsyncCb(makeLoad(() => {
    const src = fetch(new URL("./split-study-925e90e5360764cf.wasm", import.meta.url), { integrity: "sha256-kl6Q5TYHZM+RsrkNw5AgFTvnpZBgq2XYTGQEQ3A9eaE=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, [__chunk_11, __chunk_12, __chunk_14, __chunk_15, __chunk_16, __chunk_17, __chunk_19, __chunk_22, __chunk_24, __chunk_25, __chunk_28, __chunk_29, __chunk_30, __chunk_33, __chunk_34, __chunk_35, __chunk_36, __chunk_38, __chunk_39, __chunk_40, __chunk_41, __chunk_45, __chunk_47, __chunk_48, __chunk_49, __chunk_51, __chunk_52, __chunk_53, __chunk_54, __chunk_60, __chunk_63, __chunk_64, __chunk_65, __chunk_66, __chunk_71, __chunk_72, __chunk_75, __chunk_77, __chunk_78, __chunk_79, __chunk_80, __chunk_85, __chunk_86, __chunk_87, __chunk_88, __chunk_89, __chunk_98, __chunk_101, __chunk_107, __chunk_108, __chunk_112, __chunk_113, __chunk_114, __chunk_115, __chunk_119, __chunk_120, __chunk_121, __chunk_122, __chunk_126, __chunk_130, __chunk_131, __chunk_134, __chunk_135, __chunk_136, __chunk_137, __chunk_142, __chunk_143, __chunk_144, __chunk_148, __chunk_149, __chunk_150, __chunk_151, __chunk_155, __chunk_156, __chunk_157, __chunk_158, __chunk_162, __chunk_163, __chunk_167, __chunk_168, __chunk_169, __chunk_170, __chunk_174, __chunk_175, __chunk_176]));
export const __wasm_split_load_record = wrapAsyncCb(makeLoad(() => {
    const src = fetch(new URL("./split-record-1d28895a3bd496de.wasm", import.meta.url), { integrity: "sha256-HSiJWjvUlt6p0MfrjTuNLa6czoYRph2orGTpYRJWdo0=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, [__chunk_11, __chunk_12, __chunk_13, __chunk_22, __chunk_28, __chunk_33, __chunk_34, __chunk_35, __chunk_36, __chunk_37, __chunk_46, __chunk_47, __chunk_48, __chunk_49, __chunk_50, __chunk_59, __chunk_62, __chunk_74, __chunk_75, __chunk_76, __chunk_85, __chunk_94, __chunk_106, __chunk_111, __chunk_112, __chunk_113, __chunk_114, __chunk_115, __chunk_116, __chunk_117, __chunk_118, __chunk_129, __chunk_130, __chunk_131, __chunk_132, __chunk_133, __chunk_147, __chunk_148, __chunk_149, __chunk_150, __chunk_151, __chunk_152, __chunk_153, __chunk_154, __chunk_167, __chunk_168, __chunk_169, __chunk_170, __chunk_171, __chunk_172, __chunk_173]));
export const __wasm_split_load_packed_book = wrapAsyncCb(makeLoad(() => {
    const src = fetch(new URL("./split-packed-book-5cd239665cd747ea.wasm", import.meta.url), { integrity: "sha256-XNI5ZlzXR+qXamsN1VKny7v5f4Uu3Zof4a8yOuGilEo=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, [__chunk_10, __chunk_11, __chunk_12, __chunk_13, __chunk_14, __chunk_15, __chunk_16, __chunk_17, __chunk_18, __chunk_19, __chunk_20, __chunk_22, __chunk_24, __chunk_25, __chunk_28, __chunk_29, __chunk_30, __chunk_31, __chunk_32, __chunk_45, __chunk_59, __chunk_60, __chunk_61, __chunk_70, __chunk_71, __chunk_72, __chunk_73, __chunk_84, __chunk_85, __chunk_86, __chunk_87, __chunk_88, __chunk_89, __chunk_90, __chunk_91, __chunk_92, __chunk_93, __chunk_94, __chunk_95, __chunk_96, __chunk_97, __chunk_98, __chunk_99, __chunk_100, __chunk_101, __chunk_102, __chunk_103, __chunk_105, __chunk_106, __chunk_107, __chunk_108, __chunk_109, __chunk_110, __chunk_126, __chunk_127, __chunk_128, __chunk_141, __chunk_142, __chunk_143, __chunk_144, __chunk_146, __chunk_162, __chunk_163, __chunk_164, __chunk_165, __chunk_166]));
export const __wasm_split_load_class = wrapAsyncCb(makeLoad(() => {
    const src = fetch(new URL("./split-class-089ff96471fd1632.wasm", import.meta.url), { integrity: "sha256-CJ/5ZHH9FjI/+5r//TXp1HyLQe94Tn5nRjgw0r9RhF8=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, [__chunk_10, __chunk_11, __chunk_12, __chunk_13, __chunk_14, __chunk_15, __chunk_16, __chunk_17, __chunk_18, __chunk_22, __chunk_24, __chunk_27, __chunk_28, __chunk_29, __chunk_30, __chunk_31, __chunk_32, __chunk_33, __chunk_34, __chunk_35, __chunk_36, __chunk_37, __chunk_38, __chunk_39, __chunk_40, __chunk_41, __chunk_42, __chunk_43, __chunk_44, __chunk_58, __chunk_59, __chunk_60, __chunk_61, __chunk_62, __chunk_63, __chunk_64, __chunk_65, __chunk_66, __chunk_67, __chunk_68, __chunk_69, __chunk_84, __chunk_85, __chunk_86, __chunk_87, __chunk_88, __chunk_89, __chunk_90, __chunk_91, __chunk_92, __chunk_98, __chunk_99, __chunk_104, __chunk_105, __chunk_106, __chunk_107, __chunk_108, __chunk_109, __chunk_110, __chunk_111, __chunk_112, __chunk_113, __chunk_114, __chunk_115, __chunk_116, __chunk_117, __chunk_118, __chunk_119, __chunk_120, __chunk_121, __chunk_122, __chunk_123, __chunk_124, __chunk_125, __chunk_141, __chunk_142, __chunk_143, __chunk_144, __chunk_146, __chunk_147, __chunk_148, __chunk_149, __chunk_150, __chunk_151, __chunk_152, __chunk_153, __chunk_154, __chunk_155, __chunk_156, __chunk_157, __chunk_158, __chunk_159, __chunk_160, __chunk_161]));
export const __wasm_split_load_chairside = wrapAsyncCb(makeLoad(() => {
    const src = fetch(new URL("./split-chairside-0bf719bfa17be3c4.wasm", import.meta.url), { integrity: "sha256-C/cZv6F748S1jzI5Kxl5zn1Avd8jnkBmpKjh2uEkRcU=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, [__chunk_10, __chunk_11, __chunk_12, __chunk_13, __chunk_14, __chunk_15, __chunk_16, __chunk_17, __chunk_18, __chunk_19, __chunk_20, __chunk_26, __chunk_27, __chunk_28, __chunk_29, __chunk_30, __chunk_31, __chunk_32, __chunk_33, __chunk_34, __chunk_35, __chunk_36, __chunk_37, __chunk_38, __chunk_39, __chunk_40, __chunk_41, __chunk_42, __chunk_43, __chunk_44, __chunk_45, __chunk_46, __chunk_47, __chunk_48, __chunk_49, __chunk_50, __chunk_51, __chunk_52, __chunk_53, __chunk_54, __chunk_55, __chunk_56, __chunk_57, __chunk_84, __chunk_85, __chunk_86, __chunk_87, __chunk_88, __chunk_89, __chunk_90, __chunk_91, __chunk_92, __chunk_93, __chunk_94, __chunk_95, __chunk_96, __chunk_97, __chunk_104, __chunk_105, __chunk_106, __chunk_107, __chunk_108, __chunk_109, __chunk_110, __chunk_111, __chunk_112, __chunk_113, __chunk_114, __chunk_115, __chunk_116, __chunk_117, __chunk_118, __chunk_119, __chunk_120, __chunk_121, __chunk_122, __chunk_123, __chunk_124, __chunk_125, __chunk_126, __chunk_127, __chunk_128, __chunk_129, __chunk_130, __chunk_131, __chunk_132, __chunk_133, __chunk_134, __chunk_135, __chunk_136, __chunk_137, __chunk_138, __chunk_139, __chunk_140]));
export const __wasm_split_load_book = wrapAsyncCb(makeLoad(() => {
    const src = fetch(new URL("./split-book-c084c012cad71d00.wasm", import.meta.url), { integrity: "sha256-wITAEsrXHQA2z9UNYSjxycyAe8cqMLy8GyjRINP85Ko=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, [__chunk_10, __chunk_11, __chunk_12, __chunk_13, __chunk_14, __chunk_15, __chunk_16, __chunk_17, __chunk_18, __chunk_19, __chunk_20, __chunk_22, __chunk_24, __chunk_25, __chunk_84, __chunk_85, __chunk_86, __chunk_87, __chunk_88, __chunk_89, __chunk_90, __chunk_91, __chunk_92, __chunk_93, __chunk_94, __chunk_95, __chunk_96, __chunk_97, __chunk_98, __chunk_99, __chunk_100, __chunk_101, __chunk_102, __chunk_103]));
export const __wasm_split_load_bench = wrapAsyncCb(makeLoad(() => {
    const src = fetch(new URL("./split-bench-1facd440dffbbf48.wasm", import.meta.url), { integrity: "sha256-H6zUQN/7v0jYl4Ozt5HTB2OqNhH537sS2EfuTVpR39I=" });
    src.catch(() => {});
    return async (imports) => debugWrap(src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports)));
}
, [__chunk_10, __chunk_11, __chunk_12, __chunk_13, __chunk_14, __chunk_15, __chunk_16, __chunk_17, __chunk_18, __chunk_19, __chunk_20, __chunk_22, __chunk_24, __chunk_25, __chunk_26, __chunk_27, __chunk_28, __chunk_29, __chunk_30, __chunk_31, __chunk_32, __chunk_33, __chunk_34, __chunk_35, __chunk_36, __chunk_37, __chunk_38, __chunk_39, __chunk_40, __chunk_41, __chunk_42, __chunk_43, __chunk_44, __chunk_45, __chunk_46, __chunk_47, __chunk_48, __chunk_49, __chunk_50, __chunk_51, __chunk_52, __chunk_53, __chunk_54, __chunk_55, __chunk_56, __chunk_57, __chunk_58, __chunk_59, __chunk_60, __chunk_61, __chunk_62, __chunk_63, __chunk_64, __chunk_65, __chunk_66, __chunk_67, __chunk_68, __chunk_69, __chunk_70, __chunk_71, __chunk_72, __chunk_73, __chunk_74, __chunk_75, __chunk_76, __chunk_77, __chunk_78, __chunk_79, __chunk_80, __chunk_81, __chunk_82, __chunk_83]));
